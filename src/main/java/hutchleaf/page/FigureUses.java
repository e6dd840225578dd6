package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.Drawing;
import hutchleaf.model.Section;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Finds figures that a page or a card shows narrower than their lines allow. */
public final class FigureUses {
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
        Drawing large = drawings.get(picture.file());
        if (large != null) {
            double ratio =
                    drawings.getOrDefault(Drawing.small(picture.file()), large).ratio();
            CardFigure.Room room = CardFigure.room(edition.level(), ratio);
            room(picture, room.width(), room.height());
        }
    }

    private void room(Block.Picture picture, double width, double height) {
        Drawing drawing = drawings.get(picture.file());
        if (drawing == null || picture.use() == Block.Picture.Use.LABELS) {
            return;
        }
        if (FigureViews.fitting(drawings, picture.file(), width, height).isEmpty()) {
            problems.add(
                    picture.at(),
                    String.format(
                            Locale.ROOT,
                            "%s is shown %.0f mm wide, its lines allow no less than %.0f",
                            picture.file(),
                            Math.min(width, height * drawing.ratio()),
                            drawing.smallest()),
                    "draw a small twin, or give it more room");
        }
    }
}
