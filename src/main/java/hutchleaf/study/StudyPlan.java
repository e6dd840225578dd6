package hutchleaf.study;

import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import java.time.LocalDate;
import java.util.List;

/**
 * What to do with the cards on every day up to the show.
 *
 * @param start the first day
 * @param show the day of the show, on which no card is due
 * @param newADay the most new cards on a day
 * @param days every day from the start to the show, both included
 * @param cards what the plan holds, in the order in which they are new
 * @param leftOut what the days had no room for, most important first
 * @param notes what the reader should know, one sentence each: more cards a day than usual, reviews that fell away,
 *     cards left out, a day that takes longer than was asked
 */
public record StudyPlan(
        LocalDate start,
        LocalDate show,
        int newADay,
        List<Day> days,
        List<Card> cards,
        List<Card> leftOut,
        List<String> notes) {
    /** What a day is for. */
    public enum Kind {
        /** New cards while there are some, and cards seen before. */
        STUDY,
        /** Nothing new: cards seen before, and what was missed. */
        CATCH_UP,
        /** No cards at all. */
        REST,
        SHOW
    }

    /**
     * One day.
     *
     * @param toGo days to the show, 0 on the day itself
     * @param fresh new cards, in order
     * @param again cards seen before, in the order in which they were new
     */
    public record Day(LocalDate date, int toGo, Kind kind, List<CardCode> fresh, List<CardCode> again) {
        public Day {
            fresh = List.copyOf(fresh);
            again = List.copyOf(again);
        }

        /** Cards looked at on that day, new and old. */
        public int seen() {
            return fresh.size() + again.size();
        }
    }

    public StudyPlan {
        days = List.copyOf(days);
        cards = List.copyOf(cards);
        leftOut = List.copyOf(leftOut);
        notes = List.copyOf(notes);
    }

    /** Cards on the busiest day. */
    public int busiest() {
        return days.stream().mapToInt(Day::seen).max().orElse(0);
    }
}
