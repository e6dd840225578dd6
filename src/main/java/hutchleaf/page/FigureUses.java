package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.Drawing;
import hutchleaf.model.Section;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardFormat;
import hutchleaf.sheet.Paper;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Finds figures that a page or a card shows narrower than their lines allow. */
public final class FigureUses {
    private static final String MEND = "draw a small twin, or give it more room";

    private final Edition edition;
    private final Map<String, Drawing> drawings;
    private final FigureViews figures;
    private final Problems problems;

    private FigureUses(Edition edition, Problems problems) {
        this.edition = edition;
        this.drawings = edition.library().tables().drawings();
        this.figures = new FigureViews(drawings, edition.level(), Look.of(edition.level(), Paper.LETTER));
        this.problems = problems;
    }

    /** Checks every picture of an edition's guide and deck. */
    public static void check(Edition edition, Problems problems) {
        FigureUses uses = new FigureUses(edition, problems);
        edition.all()
                .flatMap(leaf -> leaf.sections().stream())
                .filter(section -> !section.pictures().isEmpty())
                .forEach(uses::section);
        edition.deck().stream().map(Card::picture).flatMap(Optional::stream).forEach(uses::card);
    }

    private void section(Section section) {
        int inARow = section.kind() == Section.Kind.SEE_IT ? section.pictures().size() : 1;
        section.pictures().forEach(picture -> room(picture, figures.width(picture, inARow), FigureViews.HIGHEST));
    }

    private void card(Block.Picture picture) {
        CardFigure.Room room = CardFigure.room(drawings, CardFace.of(DeckPages.usual(edition.level())), picture.file());
        room(picture, room.width(), room.height());
    }

    /** Checks the pictures of some cards on a format; what is wrong is told at the card's place. */
    static void check(Map<String, Drawing> drawings, List<Card> cards, CardFormat format, Problems problems) {
        CardFace face = CardFace.of(format);
        for (Card card : cards) {
            card.picture()
                    .flatMap(picture -> {
                        CardFigure.Room room = CardFigure.room(drawings, face, picture.file());
                        return tooNarrow(drawings, picture, room.width(), room.height());
                    })
                    .ifPresent(what -> problems.add(
                            card.at(),
                            "card " + card.code() + ": " + what,
                            "choose a larger format, or draw a small twin"));
        }
    }

    private void room(Block.Picture picture, double width, double height) {
        tooNarrow(drawings, picture, width, height).ifPresent(what -> problems.add(picture.at(), what, MEND));
    }

    private static Optional<String> tooNarrow(
            Map<String, Drawing> drawings, Block.Picture picture, double width, double height) {
        Drawing drawing = drawings.get(picture.file());
        if (drawing == null
                || picture.use() == Block.Picture.Use.LABELS
                || FigureViews.fitting(drawings, picture.file(), width, height).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "%s is shown %.0f mm wide, its lines allow no less than %.0f",
                picture.file(),
                Math.min(width, height * drawing.ratio()),
                drawing.smallest()));
    }
}
