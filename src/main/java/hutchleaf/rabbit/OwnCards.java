package hutchleaf.rabbit;

import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import java.util.List;

/** Flashcards about the member's own rabbit and its breed. */
public final class OwnCards {
    /** The group of their codes, which no topic may use: {@code 20.1}. */
    public static final int GROUP = 20;

    private OwnCards() {}

    /** The cards of a level: 6 for primary, 9 for junior, 12 for the older levels; each fact keeps its code at every level. */
    public static List<Card> of(Findings findings, Level level, Library library) {
        return List.of();
    }
}
