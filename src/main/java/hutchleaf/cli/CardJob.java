package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.model.Card;
import hutchleaf.page.DeckPart;
import hutchleaf.sheet.CardForm;
import java.util.List;

/**
 * Cards that make one file.
 *
 * @param file path without its ending
 * @param name printed in the corner of each sheet
 * @param tells whether a first page tells how to make the cards
 */
record CardJob(Edition edition, List<Card> cards, CardForm form, String file, String name, boolean tells) {
    CardJob {
        cards = List.copyOf(cards);
    }

    DeckPart part() {
        return new DeckPart(name, 0, 0, tells);
    }

    String pdf() {
        return file + ".pdf";
    }

    /** Some of its cards in another form, as a file beside it. */
    CardJob beside(List<Card> some, CardForm other) {
        return new CardJob(
                edition, some, other, file + "-others", edition.level().title() + ", larger", false);
    }

    CardJob only(List<Card> some) {
        return new CardJob(edition, some, form, file, name, tells);
    }
}
