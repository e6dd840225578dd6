package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates in the forms a club may set. ISO dates follow ISO 8601, calendar date, extended form. */
final class DateFormTest {
    private static final Place AT = new Place("club/members.csv", 7);

    private final Problems problems = new Problems();

    private Optional<LocalDate> read(String form, String written) {
        return DateForm.of(form, AT, problems).flatMap(known -> known.read("birth_date", written, AT, problems));
    }

    private List<String> said() {
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "iso, 2015-04-25",
        "iso, 2015-4-25",
        "month/day/year, 04/25/2015",
        "month/day/year, 4/25/2015",
        "month/day/year, 2015-04-25",
        "day/month/year, 25/04/2015",
        "day/month/year, 25/4/2015",
        "day/month/year, 2015-04-25",
        "day.month.year, 25.04.2015",
        "day.month.year, 25.4.2015",
        "day.month.year, 2015-04-25",
        "Day.Month.Year, 25.4.2015"
    })
    void aDateIsReadInTheClubsFormAndInIso(String form, String written) {
        assertThat(read(form, written)).contains(LocalDate.of(2015, 4, 25));
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"month/day/year, 2015-03-04", "day/month/year, 2015-04-03"})
    void theSameDigitsMeanWhatTheFormSays(String form, LocalDate day) {
        assertThat(read(form, "03/04/2015")).contains(day);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "iso | 03/04/2015 | cannot read the date '03/04/2015' in 'birth_date': it may mean 2015-03-04 or 2015-04-03;"
                        + " write it in one of these ways, or set date-form in club.md to month/day/year or day/month/year",
                "iso | 25/04/2015 | cannot read the date '25/04/2015' in 'birth_date'; write it as 2015-04-25, or set date-form in"
                        + " club.md to day/month/year",
                "iso | 04/25/2015 | cannot read the date '04/25/2015' in 'birth_date'; write it as 2015-04-25, or set date-form in"
                        + " club.md to month/day/year",
                "iso | 03.04.2015 | cannot read the date '03.04.2015' in 'birth_date'; write it as 2015-04-03, or set date-form in"
                        + " club.md to day.month.year",
                "iso | 25/26/2015 | cannot read the date '25/26/2015' in 'birth_date'; write it as 2015-04-25",
                "iso | 25/04/15 | the year has two digits in '25/04/15' in 'birth_date'; write all four",
                "day/month/year | 25/04/15 | the year has two digits in '25/04/15' in 'birth_date'; write all four",
                "month/day/year | 25/04/2015 | there is no day '25/04/2015' in 'birth_date'; look at day and month; write it as"
                        + " 04/25/2015 or 2015-04-25",
                "iso | 2015-02-29 | there is no day '2015-02-29' in 'birth_date'; look at day and month; write it as 2015-04-25",
                "day/month/year | 25.04.2015 | cannot read the date '25.04.2015' in 'birth_date'; write it as 25/04/2015 or"
                        + " 2015-04-25",
                "iso | 25 April 2015 | cannot read the date '25 April 2015' in 'birth_date'; write it as 2015-04-25",
                "iso | 42119 | cannot read the date '42119' in 'birth_date'; this is a spreadsheet's day number: format the column"
                        + " as a date, 2015-04-25",
                "month/day | 04/25/2015 | 'date-form' is 'month/day'; use one of: iso, month/day/year, day/month/year, day.month.year"
            })
    void aDateThatCannotBeSureIsRefused(String form, String written, String message) {
        assertThat(read(form, written)).isEmpty();
        assertThat(said()).containsExactly("club/members.csv:7: " + message);
    }
}
