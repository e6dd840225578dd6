package hutchleaf.club;

import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a club writes dates, by {@code date-form:} of its {@code club.md}. ISO 8601 ({@code 2015-04-25}) is read whatever
 * the form is. A date that could be read in two ways is refused, and so is a year of two digits.
 */
enum DateForm {
    ISO("iso", "-", "ymd"),
    MONTH_DAY_YEAR("month/day/year", "/", "mdy"),
    DAY_MONTH_YEAR("day/month/year", "/", "dmy"),
    DAY_MONTH_YEAR_DOTS("day.month.year", ".", "dmy");

    private static final DateTimeFormatter PRINTED = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final Pattern ISO_DATE = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern PARTS = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4})");
    private static final Pattern SHORT_YEAR = Pattern.compile("\\d{1,2}([-/.])\\d{1,2}\\1\\d{2}");
    private static final Pattern DAY_NUMBER = Pattern.compile("[34]\\d{4}(\\.0)?");
    private static final int MONTHS = 12;

    private final String word;
    private final String separator;
    private final String order;

    DateForm(String word, String separator, String order) {
        this.word = word;
        this.separator = separator;
        this.order = order;
    }

    /** As a page prints a date: {@code 1 September 2025}. */
    static String printed(LocalDate date) {
        return PRINTED.format(date);
    }

    static Optional<DateForm> of(String word, Place at, Problems problems) {
        Optional<DateForm> form = Arrays.stream(values())
                .filter(known -> known.word.equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
        if (form.isEmpty()) {
            List<String> words =
                    Arrays.stream(values()).map(known -> known.word).toList();
            problems.add(at, "'date-form' is '" + word + "'", NearMiss.mend(word, words));
        }
        return form;
    }

    /**
     * Reads a date.
     *
     * @param label what the date is of, for messages
     */
    Optional<LocalDate> read(String label, String written, Place at, Problems problems) {
        Matcher iso = ISO_DATE.matcher(written);
        if (iso.matches()) {
            return date(label, written, new int[] {number(iso, 1), number(iso, 2), number(iso, 3)}, at, problems);
        }
        Matcher parts = PARTS.matcher(written);
        if (parts.matches() && this != ISO && parts.group(2).equals(separator)) {
            int first = number(parts, 1);
            int second = number(parts, 3);
            boolean monthFirst = order.startsWith("m");
            int[] read = {number(parts, 4), monthFirst ? first : second, monthFirst ? second : first};
            return date(label, written, read, at, problems);
        }
        String what = "cannot read the date '" + written + "' in '" + label + "'";
        if (parts.matches() && this == ISO) {
            formless(what, parts, at, problems);
        } else if (SHORT_YEAR.matcher(written).matches()) {
            problems.add(at, "the year has two digits in '" + written + "' in '" + label + "'", "write all four");
        } else if (DAY_NUMBER.matcher(written).matches()) {
            problems.add(at, what, "this is a spreadsheet's day number: format the column as a date, 2015-04-25");
        } else {
            problems.add(at, what, "write it as " + examples());
        }
        return Optional.empty();
    }

    /** A date in another form than ISO, while the club has not said which. */
    private static void formless(String what, Matcher parts, Place at, Problems problems) {
        int first = number(parts, 1);
        int second = number(parts, 3);
        String year = parts.group(4);
        boolean dots = parts.group(2).equals(".");
        if (!dots && first <= MONTHS && second <= MONTHS && first != second) {
            problems.add(
                    at,
                    what + ": it may mean " + iso(year, first, second) + " or " + iso(year, second, first),
                    "write it in one of these ways, or set date-form in club.md to " + MONTH_DAY_YEAR.word + " or "
                            + DAY_MONTH_YEAR.word);
        } else if (first > MONTHS && second > MONTHS) {
            problems.add(at, what, "write it as " + ISO.examples());
        } else {
            boolean monthFirst = !dots && second > MONTHS;
            DateForm meant = dots ? DAY_MONTH_YEAR_DOTS : monthFirst ? MONTH_DAY_YEAR : DAY_MONTH_YEAR;
            String iso = monthFirst ? iso(year, first, second) : iso(year, second, first);
            problems.add(at, what, "write it as " + iso + ", or set date-form in club.md to " + meant.word);
        }
    }

    private Optional<LocalDate> date(String label, String written, int[] read, Place at, Problems problems) {
        try {
            return Optional.of(LocalDate.of(read[0], read[1], read[2]));
        } catch (DateTimeException e) {
            problems.add(
                    at,
                    "there is no day '" + written + "' in '" + label + "'",
                    "look at day and month; write it as " + examples());
            return Optional.empty();
        }
    }

    private String examples() {
        return switch (this) {
            case ISO -> "2015-04-25";
            case MONTH_DAY_YEAR -> "04/25/2015 or 2015-04-25";
            case DAY_MONTH_YEAR -> "25/04/2015 or 2015-04-25";
            case DAY_MONTH_YEAR_DOTS -> "25.04.2015 or 2015-04-25";
        };
    }

    private static String iso(String year, int month, int day) {
        return String.format(Locale.ROOT, "%s-%02d-%02d", year, month, day);
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }
}
