package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Setting;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardForm;
import hutchleaf.sheet.CardFormat;
import hutchleaf.sheet.Paper;
import java.util.List;
import java.util.Optional;

/** Sheets of flashcards. */
public final class CardPapers {
    private final Templates templates;
    private final Paper paper;

    CardPapers(Templates templates, Paper paper) {
        this.templates = templates;
        this.paper = paper;
    }

    /** A level's whole deck in its usual form, with a first page that tells how to make the cards. */
    public Optional<Manuscript> deck(Edition edition, Problems problems) {
        return some(edition, edition.deck(), problems);
    }

    /** Some cards only, as the whole deck has them. */
    public Optional<Manuscript> some(Edition edition, List<Card> cards, Problems problems) {
        DeckPart whole = new DeckPart(edition.level().title() + " deck", 0, 0, true);
        return some(edition, cards, usualForm(edition.level()), whole, problems);
    }

    /** Some cards only, in a form; the title names a format that is not the usual one. */
    public Optional<Manuscript> some(
            Edition edition, List<Card> cards, CardForm form, DeckPart part, Problems problems) {
        String title = edition.level().title() + " flashcards"
                + (form.equals(usualForm(edition.level()))
                        ? ""
                        : ", " + form.format().word());
        return templates.manuscript(title, "deck.ftl", DeckPages.of(edition, cards, part, form.on(paper)), problems);
    }

    /** Sheets that so many cards of a form take. */
    public int sheets(CardForm form, int cards) {
        return form.on(paper).sheets(cards);
    }

    /** How a level's cards are made where nothing else is asked for. */
    public static CardForm usualForm(Level level) {
        return CardForm.usual(DeckPages.usual(level));
    }

    /** The same in a setting: large print has cards of its own. */
    public static CardForm usualForm(Level level, Setting setting) {
        return setting == Setting.LARGE ? CardForm.usual(CardFormat.LARGE_PRINT) : usualForm(level);
    }

    /** Finds cards whose picture is too fine for a format; each problem stands at its card's place. */
    public static void checkPictures(Edition edition, List<Card> cards, CardFormat format, Problems problems) {
        FigureUses.check(edition.library().tables().drawings(), cards, format, problems);
    }
}
