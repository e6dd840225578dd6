package hutchleaf.study;

import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Cards and requests for the tests of this package. */
final class Cards {
    static final Place AT = new Place("club/club.md", 8);

    private Cards() {}

    /** So many, coded 1.1 up to 1.9, 2.1 and so on. */
    static List<Card> deck(int cards) {
        return IntStream.range(0, cards).mapToObj(Cards::card).toList();
    }

    static Card card(int index) {
        return new Card(
                new CardCode(1 + index / 9, 1 + index % 9),
                Card.Need.CORE,
                Levels.ALL,
                new Place("content/routine/carry.md", 20 + index),
                Words.of("Question " + index),
                Optional.empty(),
                Words.of("Answer " + index));
    }

    /** Every day is for study, and an hour long. */
    static Request everyDay(LocalDate start, LocalDate show, Level level, int cards) {
        return new Request(start, show, Set.of(), level, deck(cards), false, 60, AT);
    }

    /** With catch-up days, and fifteen minutes a day. */
    static Request usual(LocalDate start, LocalDate show, Set<DayOfWeek> rest, Level level, int cards) {
        return new Request(start, show, rest, level, deck(cards), true, 15, AT);
    }
}
