package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.club.Divisions.Counted;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.DivisionRule.By;
import hutchleaf.model.Level;
import hutchleaf.model.Member.Division;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ages at a cut-off and the divisions they lead to, worked by hand.
 *
 * <p>Published cut-offs: 1 January (Clemson Extension, and New Mexico State University Extension), 1 September (Utah), 1
 * October (Montana).
 */
final class DivisionsTest {
    private static final Place AT = new Place("club/members.csv", 2);
    private static final LocalDate SHOW = LocalDate.of(2026, 8, 8);

    private final Problems problems = new Problems();

    private List<String> said() {
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "2018-01-01, 2026-01-01, 8, 1 January: Clemson Extension",
        "2018-01-02, 2026-01-01, 7, 1 January: Clemson Extension",
        "2021-01-01, 2026-01-01, 5, Clemson Extension: who is 5 on 1 January may join",
        "2021-01-02, 2026-01-01, 4, Clemson Extension: who turns 5 on 2 January waits",
        "2017-10-01, 2025-10-01, 8, 1 October: Montana",
        "2017-10-02, 2025-10-01, 7, 1 October: Montana",
        "2017-09-01, 2025-09-01, 8, 1 September: Utah",
        "2017-09-02, 2025-09-01, 7, 1 September: Utah",
        "2012-02-29, 2021-02-28, 8, born on a leap day: not older yet on 28 February",
        "2012-02-29, 2021-03-01, 9, born on a leap day: older on 1 March",
        "2012-02-29, 2024-02-29, 12, born on a leap day: in a leap year on the day itself"
    })
    void anAgeIsCountedInWholeYears(LocalDate born, LocalDate day, int years, String source) {
        assertThat(Divisions.years(born, day)).as(source).isEqualTo(years);
    }

    /** Bands as the table of divisions gives them, with C18 and C22 to C29 of its sources. */
    @ParameterizedTest
    @CsvSource({
        "age in September, 2025-09-01, 2020-09-01, , Youngest, 5 years old on 1 September 2025",
        "age in September, 2025-09-01, 2017-09-02, , Youngest, 7 years old on 1 September 2025",
        "age in September, 2025-09-01, 2017-09-01, , Junior, 8 years old on 1 September 2025",
        "age in September, 2025-09-01, 2014-09-02, , Junior, 10 years old on 1 September 2025",
        "age in September, 2025-09-01, 2014-09-01, , Intermediate, 11 years old on 1 September 2025",
        "age in September, 2025-09-01, 2011-09-01, , Senior, 14 years old on 1 September 2025",
        "age in September, 2025-09-01, 2006-09-02, , Senior, 18 years old on 1 September 2025",
        "age in January, 2026-01-01, 2018-01-01, , Junior, 8 years old on 1 January 2026",
        "age in December, 2026-12-31, 2017-12-31, , Junior, 9 years old on 31 December 2026",
        "age in December, 2026-12-31, 2018-01-01, , Primary, 8 years old on 31 December 2026",
        "grade in January, 2026-01-01, , 0, Primary, in kindergarten on 1 January 2026",
        "grade in January, 2026-01-01, 2010-01-01, 5, Junior, in grade 5 on 1 January 2026",
        "grade in January, 2026-01-01, , 12, Senior, in grade 12 on 1 January 2026",
        "grade in August, 2025-08-31, 2018-05-01, 2, Youngest, 7 years old on 31 August 2025",
        "grade in August, 2025-08-31, 2017-08-31, 3, Junior, in grade 3 on 31 August 2025"
    })
    void theDivisionAndItsReason(
            String ruleSet, LocalDate counted, LocalDate born, Integer grade, String division, String why) {
        Optional<Division> found = divisions(ruleSet, counted)
                .of(new Counted(Optional.ofNullable(born), Optional.ofNullable(grade), Optional.empty()), AT, problems);
        assertThat(said()).isEmpty();
        assertThat(found.orElseThrow().name()).isEqualTo(division);
        assertThat(found.orElseThrow().why()).isEqualTo(why);
    }

    @Test
    void theDivisionSaysItsLevelWhetherItIsPlacedAndTheAgeOnTheShowDay() {
        Counted member = new Counted(Optional.of(LocalDate.of(2018, 5, 2)), Optional.empty(), Optional.empty());
        assertThat(divisions("age in September", LocalDate.of(2025, 9, 1)).of(member, AT, problems))
                .contains(new Division(
                        "Youngest", Level.PRIMARY, "7 years old on 1 September 2025", false, Optional.of(8)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "age in September | 2025-09-01 | 2020-09-02 | - | 4 years old on 1 September 2025: outside every division of"
                        + " 'age in September' (Youngest age 5 to 7, Junior age 8 to 10, Intermediate age 11 to 13, Senior age 14 to 18);"
                        + " look at the row, and at rule-set and cut-off in club.md",
                "age in September | 2025-09-01 | 2006-09-01 | - | 19 years old on 1 September 2025: outside every division of"
                        + " 'age in September' (Youngest age 5 to 7, Junior age 8 to 10, Intermediate age 11 to 13, Senior age 14 to 18);"
                        + " look at the row, and at rule-set and cut-off in club.md",
                "age in January | 2026-01-01 | 2018-01-02 | - | 7 years old on 1 January 2026: outside every division of"
                        + " 'age in January' (Junior age 8 to 10, Intermediate age 11 to 13, Senior age 14 to 18);"
                        + " look at the row, and at rule-set and cut-off in club.md",
                "grade in August | 2025-08-31 | - | 2 | in grade 2 on 31 August 2025: outside every division of"
                        + " 'grade in August' (Youngest age 5 to 8, Junior grade 3 to 5, Intermediate grade 6 to 8, Senior grade 9 to 12);"
                        + " fill in 'birth_date' too, or look at rule-set in club.md",
                "age in September | 2025-09-01 | - | 4 | no 'birth_date' in this row; fill the cell",
                "grade in January | 2026-01-01 | 2016-01-01 | - | no 'grade' in this row; fill the cell",
                "grade in August | 2025-08-31 | - | - | no 'grade' or 'birth_date' in this row; fill the cell"
            })
    void aMemberOutsideEveryDivisionIsToldTheAgeAndTheBands(
            String ruleSet, LocalDate counted, LocalDate born, Integer grade, String message) {
        assertThat(divisions(ruleSet, counted)
                        .of(
                                new Counted(Optional.ofNullable(born), Optional.ofNullable(grade), Optional.empty()),
                                AT,
                                problems))
                .isEmpty();
        assertThat(said()).containsExactly("club/members.csv:2: " + message);
    }

    @Test
    void aRuleSetByExperienceCountsYearsInAClub() {
        DivisionRule rule = new DivisionRule(
                "by years",
                "Second",
                Level.JUNIOR,
                By.EXPERIENCE,
                Optional.of(2),
                Optional.empty(),
                new DivisionRule.Terms("1 January of the show year", true, List.of(), AT));
        Divisions divisions = new Divisions(List.of(rule), SHOW, SHOW);
        assertThat(divisions.columns()).containsExactly(Column.YEARS_IN_CLUB);
        assertThat(divisions
                        .of(new Counted(Optional.empty(), Optional.empty(), Optional.of(3)), AT, problems)
                        .orElseThrow()
                        .why())
                .isEqualTo("in year 3 in a club");
        assertThat(divisions.of(new Counted(Optional.empty(), Optional.empty(), Optional.of(1)), AT, problems))
                .isEmpty();
        assertThat(said())
                .containsExactly("club/members.csv:2: in year 1 in a club: outside every division of 'by years' (Second"
                        + " years_in_club 2 and over); look at the row, and at rule-set and cut-off in club.md");
    }

    /** The words are those of the table of divisions; that a programme year runs from July to June is C24's. */
    @ParameterizedTest
    @CsvSource({
        "2026-08-08, 1 September that opens the programme year, 2025-09-01",
        "2026-09-01, 1 September that opens the programme year, 2026-09-01",
        "2026-08-08, 31 August that closes the previous programme year, 2025-08-31",
        "2026-08-31, 31 August that closes the previous programme year, 2025-08-31",
        "2026-09-01, 31 August that closes the previous programme year, 2026-08-31",
        "2026-08-08, 1 January of the show year, 2026-01-01",
        "2026-06-30, 1 January of the programme year, 2026-01-01",
        "2026-06-30, 31 December of the programme year, 2025-12-31"
    })
    void theDayOfCountingIsReadFromTheRuleSet(LocalDate show, String words, LocalDate day) {
        assertThat(CutOff.of(words, show, AT, problems)).contains(day);
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-08-08, 31 December of the programme year, 2026-12-31, 31 December 2026",
        "2026-09-30, 1 January of the programme year, 2026-01-01, 1 January 2026",
        "2026-10-01, 1 January of the programme year, 2027-01-01, 1 January 2027"
    })
    void aGuessedDayOfCountingIsTold(LocalDate show, String words, LocalDate day, String said) {
        assertThat(CutOff.of(words, show, AT, problems)).contains(day);
        assertThat(said())
                .containsExactly("warning: club/members.csv:2: ages are counted on " + said + ", as we guess from '"
                        + words + "'; add a line cut-off: with the date in your rule book");
    }

    @ParameterizedTest
    @CsvSource({"the first Monday in May", "1 Smarch of the show year", "31 June of the show year", "1 May of the tide"
    })
    void aDayOfCountingThatIsNotADateHasToBeSaid(String words) {
        assertThat(CutOff.of(words, SHOW, AT, problems)).isEmpty();
        assertThat(said())
                .containsExactly("club/members.csv:2: the rule set counts on '" + words
                        + "', and no 'cut-off:' says which day that is; add a line cut-off: with a date");
    }

    @Test
    void everyRuleSetOfTheContentHasADayOfCounting() {
        for (DivisionRule rule : Folder.LIBRARY.contest().divisions()) {
            assertThat(CutOff.of(rule.terms().countedOn(), LocalDate.of(2026, 6, 1), AT, problems))
                    .as(rule.ruleSet())
                    .isPresent();
        }
        assertThat(said()).isEmpty();
    }

    /** Bands of "age in September": 5 to 7, 8 to 10, 11 to 13, 14 to 18. */
    @ParameterizedTest
    @CsvSource({
        "2017-04-11, 2, PRIMARY, 8 now and 7 a year before",
        "2017-04-11, , PRIMARY, as long as nobody says it is the first year",
        "2017-04-11, 1, , new this year",
        "2014-10-30, 3, JUNIOR, 10 now and 9 a year before",
        "2014-09-01, 3, JUNIOR, 11 now and 10 a year before",
        "2020-09-01, 2, , 5 now and too young a year before"
    })
    void theLevelOfLastYearIsThatOfTheDivisionAYearBefore(LocalDate born, Integer years, Level level, String why) {
        assertThat(divisions("age in September", LocalDate.of(2025, 9, 1))
                        .lastYear(new Counted(Optional.of(born), Optional.empty(), Optional.ofNullable(years))))
                .as(why)
                .isEqualTo(Optional.ofNullable(level));
    }

    private static Divisions divisions(String ruleSet, LocalDate counted) {
        return new Divisions(
                Folder.LIBRARY.contest().divisions().stream()
                        .filter(rule -> rule.ruleSet().equals(ruleSet))
                        .toList(),
                counted,
                SHOW);
    }
}
