package hutchleaf.study;

import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.problem.Place;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * What a plan is made for.
 *
 * @param start the first day of study, before the show
 * @param restDays days of the week without cards
 * @param level sets how many cards a day are new
 * @param cards most important first: cautions, stops, own rabbit and breed, core, then more; one named twice counts once
 * @param catchUpDays whether some days of every week bring nothing new
 * @param minutes a day with the cards
 * @param at where start, rest days and minutes are written
 */
public record Request(
        LocalDate start,
        LocalDate show,
        Set<DayOfWeek> restDays,
        Level level,
        List<Card> cards,
        boolean catchUpDays,
        int minutes,
        Place at) {
    public Request {
        restDays = Set.copyOf(restDays);
        cards = List.copyOf(cards);
    }
}
