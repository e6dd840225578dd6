package hutchleaf.study;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When a card is seen again: 1, 3, 7 and 15 days after the day on which it was new.
 *
 * <p>The last gap is a fair share of the weeks that a member has. Cepeda, Vul, Rohrer, Wixted and Pashler, Psychological
 * Science 19 (2008) 1095-1102, found the best gap at about 20 % of the time to the test for a few weeks and about 5 % at
 * a year (seen as an abstract). That the gaps grow is a choice: equal and growing gaps were recalled equally well eight
 * weeks on, growing ones better while learning (Kang, Lindsey, Mozer and Pashler, Psychonomic Bulletin and Review,
 * 2014). The four numbers themselves are common practice, no source.
 */
final class Reviews {
    /** Days after the first day. */
    static final List<Integer> GAPS = List.of(1, 3, 7, 15);

    private Reviews() {}

    /**
     * The days on which a card is seen again. A day of rest pushes a review to the next open day, and no two of a card
     * fall on one day; those that would fall on the show or later are dropped, the last first.
     */
    static List<LocalDate> after(LocalDate first, StudyDays days) {
        List<LocalDate> dates = new ArrayList<>();
        LocalDate earliest = first.plusDays(1);
        for (int gap : GAPS) {
            LocalDate due = first.plusDays(gap);
            Optional<LocalDate> date = days.onOrAfter(due.isBefore(earliest) ? earliest : due);
            if (date.isEmpty()) {
                break;
            }
            dates.add(date.get());
            earliest = date.get().plusDays(1);
        }
        return List.copyOf(dates);
    }
}
