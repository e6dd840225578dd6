package hutchleaf.rabbit;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * An age as shows count it: whole calendar months, from the day of birth to the same day of a later month.
 *
 * @param born no later than the day; {@link #known} tells
 */
record Age(LocalDate born, LocalDate day) {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final int MONTHS_A_YEAR = 12;

    /** Younger rabbits have their age told in weeks. */
    private static final int MONTHS_FROM = 2;

    /** Whether it was born by that day. */
    boolean known() {
        return !born.isAfter(day);
    }

    long months() {
        return ChronoUnit.MONTHS.between(born, day);
    }

    /** As a member says it: {@code 5 weeks}, {@code 6 months}, {@code 1 year 3 months}. */
    String words() {
        if (months() < MONTHS_FROM) {
            long weeks = ChronoUnit.WEEKS.between(born, day);
            return weeks == 0 ? "under 1 week" : count(weeks, "week");
        }
        long years = months() / MONTHS_A_YEAR;
        long rest = months() % MONTHS_A_YEAR;
        if (years == 0) {
            return count(rest, "month");
        }
        return rest == 0 ? count(years, "year") : count(years, "year") + " " + count(rest, "month");
    }

    /** The first day on which it is so many whole months old: born on 31 December, 6 months on 1 July. */
    LocalDate turns(int months) {
        LocalDate sameDay = born.plusMonths(months);
        return ChronoUnit.MONTHS.between(born, sameDay) < months ? sameDay.plusDays(1) : sameDay;
    }

    static String printed(LocalDate date) {
        return DATE.format(date);
    }

    static String count(long number, String unit) {
        return number + " " + unit + (number == 1 ? "" : "s");
    }
}
