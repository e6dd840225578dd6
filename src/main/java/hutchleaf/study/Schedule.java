package hutchleaf.study;

import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The days of every card that found room, at so many new ones a day.
 *
 * @param turns in the order in which the cards are new
 */
record Schedule(int perDay, List<Turns> turns) {
    /** When one card is new, and when it is seen again: at least once. */
    record Turns(CardCode card, LocalDate first, List<LocalDate> again) {
        Turns {
            again = List.copyOf(again);
        }

        boolean isWhole() {
            return again.size() == Reviews.GAPS.size();
        }
    }

    Schedule {
        turns = List.copyOf(turns);
    }

    /** Each card on the first study day with room, as long as it can be seen once more. */
    static Schedule of(List<Card> cards, int perDay, StudyDays days) {
        List<Turns> turns = new ArrayList<>();
        for (LocalDate first : days.study()) {
            List<LocalDate> again = Reviews.after(first, days);
            if (again.isEmpty()) {
                break;
            }
            int from = turns.size();
            cards.subList(from, Math.min(cards.size(), from + perDay))
                    .forEach(card -> turns.add(new Turns(card.code(), first, again)));
        }
        return new Schedule(perDay, turns);
    }

    /** Whether so many cards all found room, with every review. */
    boolean isWhole(int cards) {
        return turns.size() == cards && turns.stream().allMatch(Turns::isWhole);
    }

    /** Cards that lost a review or more, because the show comes first. */
    long shortened() {
        return turns.stream().filter(turn -> !turn.isWhole()).count();
    }
}
