package hutchleaf.edition;

import hutchleaf.model.Card;
import hutchleaf.model.Routine;
import hutchleaf.model.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/**
 * The order in which a member learns cards: what keeps the rabbit safe, the stops of the routine, their own rabbit and
 * its breed, then the other cards that the level needs first. What stands last is left out first where days are short.
 */
public final class StudyOrder {
    private static final int SAFE = 0;
    private static final int STOP = 1;
    private static final int OWN = 2;
    private static final int OTHER = 3;

    private StudyOrder() {}

    /**
     * The core cards of a level with a member's own.
     *
     * @param own cards on the member's rabbits
     */
    public static List<Card> of(Edition edition, List<Card> own) {
        Map<Integer, Subject> subjects = edition.library().topics().stream()
                .collect(Collectors.toMap(
                        topic -> topic.head().code(), topic -> topic.head().subject(), (one, other) -> one));
        ToIntFunction<Card> rank = card -> rank(card, own, subjects);
        LinkedHashSet<Card> cards = new LinkedHashSet<>(own);
        edition.deck().stream().filter(card -> card.need() == Card.Need.CORE).forEach(cards::add);
        List<Card> ordered = new ArrayList<>(cards);
        ordered.sort(Comparator.comparingInt(rank).thenComparing(Card::code));
        return ordered;
    }

    private static int rank(Card card, List<Card> own, Map<Integer, Subject> subjects) {
        if (own.contains(card)) {
            return OWN;
        } else if (subjects.get(card.code().group()) == Subject.HANDLING) {
            return SAFE;
        }
        return card.code().group() <= Routine.STOPS ? STOP : OTHER;
    }

    /** Cards of an edition that a lower level's deck did not have. */
    public static List<Card> newSince(List<Card> cards, Edition before) {
        List<Card> had = before.deck();
        return cards.stream().filter(card -> !had.contains(card)).toList();
    }
}
