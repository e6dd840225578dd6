package hutchleaf.club;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.regex.Pattern;

/** What a leader should look at again although it can be printed. The bounds are own rules, to catch slips of the pen. */
final class RowChecks {
    private static final Pattern FORMULA = Pattern.compile("[=+@].*|-\\s*\\p{L}.*");
    private static final int YOUNGEST_MEMBER = 4;
    private static final int OLDEST_MEMBER = 21;
    private static final int OLDEST_RABBIT = 12;

    /** A kit is with its mother until about this age; common practice, no source. */
    private static final int WEANED_WEEKS = 8;

    private RowChecks() {}

    /** Text that a spreadsheet would work out instead of showing it. */
    static void formulas(Cells cells) {
        cells.cells().stream()
                .map(Cells::tidy)
                .filter(cell -> FORMULA.matcher(cell).matches())
                .forEach(cell -> cells.warn(
                        "the cell '" + cell + "' looks like a formula",
                        "write the plain value; it is printed as it is"));
    }

    static void memberAge(int years, Cells cells) {
        if (years < YOUNGEST_MEMBER || years > OLDEST_MEMBER) {
            cells.warn(
                    "the member is " + Divisions.old(years) + " on the show day", "look at the year of 'birth_date'");
        }
    }

    static void study(Row.Person person, Cells cells) {
        person.study()
                .ifPresent(study -> person.division()
                        .filter(division -> study.compareTo(division.level()) > 0)
                        .ifPresent(division -> cells.warn(
                                "'study_level' is " + study.word() + ", above the division, which is "
                                        + division.level().word(),
                                "leave the cell empty, or name a lower level")));
    }

    /** An error when the rabbit is born after the show. */
    static void rabbitAge(String name, LocalDate born, LocalDate show, Cells cells) {
        long weeks = ChronoUnit.WEEKS.between(born, show);
        if (born.isAfter(show)) {
            cells.error(
                    "'" + name + "' is not born yet on the show day, " + DateForm.printed(show),
                    "look at 'rabbit_birth_date', and at show-date in club.md");
        } else if (weeks < WEANED_WEEKS) {
            cells.warn(
                    "'" + name + "' is " + weeks + (weeks == 1 ? " week" : " weeks") + " old on the show day",
                    "a kit under " + WEANED_WEEKS + " weeks stays at home with its mother: show another rabbit");
        } else if (Divisions.years(born, show) > OLDEST_RABBIT) {
            cells.warn(
                    "'" + name + "' is " + Divisions.old(Divisions.years(born, show)) + " on the show day",
                    "look at the year of 'rabbit_birth_date'");
        }
    }
}
