package hutchleaf.club;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The day on which ages are counted, from the words of a rule set, for a club that writes no {@code cut-off:}.
 *
 * <ul>
 *   <li>{@code 1 January of the show year}: that day in the year of the show.
 *   <li>{@code 1 September that opens the programme year}: the last one that is not after the show.
 *   <li>{@code 31 August that closes the previous programme year}: the last one before the show.
 *   <li>{@code 31 December of the programme year}: the next one from the last 1 July on, since the programme that counts
 *       then runs from July to June (C24 of {@code sources.md}).
 *   <li>any other day {@code of the programme year}: the next one from the last 1 October on (common practice, no
 *       source). For a show in the second half of the year both are a guess, and a warning says so.
 * </ul>
 */
final class CutOff {
    private static final Pattern FORM = Pattern.compile("(?<day>\\d{1,2}) (?<month>[A-Z][a-z]+) (?<which>.+)");

    private CutOff() {}

    /** The day; an error where the words are of another kind, since then the club has to say it. */
    static Optional<LocalDate> of(String words, LocalDate show, Place at, Problems problems) {
        Matcher form = FORM.matcher(words);
        Optional<LocalDate> day = form.matches() ? day(form, show) : Optional.empty();
        if (day.isEmpty()) {
            problems.add(
                    at,
                    "the rule set counts on '" + words + "', and no 'cut-off:' says which day that is",
                    "add a line cut-off: with a date");
        } else if (words.endsWith("of the programme year") && show.getMonth().compareTo(Month.JULY) >= 0) {
            problems.warn(
                    at,
                    "ages are counted on " + DateForm.printed(day.get()) + ", as we guess from '" + words + "'",
                    "add a line cut-off: with the date in your rule book");
        }
        return day;
    }

    private static Optional<LocalDate> day(Matcher form, LocalDate show) {
        return Arrays.stream(Month.values())
                .filter(month -> month.name().equals(form.group("month").toUpperCase(Locale.ROOT)))
                .findFirst()
                .filter(month -> Integer.parseInt(form.group("day")) <= month.maxLength())
                .map(month -> MonthDay.of(month, Integer.parseInt(form.group("day"))))
                .flatMap(day -> day(day, form.group("which"), show));
    }

    private static Optional<LocalDate> day(MonthDay day, String which, LocalDate show) {
        return switch (which) {
            case "of the show year" -> Optional.of(day.atYear(show.getYear()));
            case "that opens the programme year" -> Optional.of(lastUpTo(day, show));
            case "that closes the previous programme year" -> Optional.of(lastUpTo(day, show.minusDays(1)));
            case "of the programme year" -> {
                Month starts = day.getMonth() == Month.DECEMBER ? Month.JULY : Month.OCTOBER;
                LocalDate start = lastUpTo(MonthDay.of(starts, 1), show);
                LocalDate same = day.atYear(start.getYear());
                yield Optional.of(same.isBefore(start) ? day.atYear(start.getYear() + 1) : same);
            }
            default -> Optional.empty();
        };
    }

    private static LocalDate lastUpTo(MonthDay day, LocalDate show) {
        LocalDate same = day.atYear(show.getYear());
        return same.isAfter(show) ? day.atYear(show.getYear() - 1) : same;
    }
}
