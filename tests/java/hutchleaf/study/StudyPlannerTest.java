package hutchleaf.study;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Level;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import hutchleaf.study.StudyPlan.Day;
import hutchleaf.study.StudyPlan.Kind;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class StudyPlannerTest {
    /** A Saturday. */
    private static final LocalDate SHOW = LocalDate.of(2026, 8, 8);

    private final Problems problems = new Problems();

    private StudyPlan plan(Request request) {
        StudyPlan plan = StudyPlanner.plan(request, problems).orElseThrow();
        assertThat(problems.sorted()).isEmpty();
        return plan;
    }

    private List<String> refusal(Request request) {
        assertThat(StudyPlanner.plan(request, problems)).isEmpty();
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    private static List<LocalDate> seen(StudyPlan plan, CardCode card) {
        return plan.days().stream()
                .filter(day -> day.fresh().contains(card) || day.again().contains(card))
                .map(Day::date)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "30"})
    void aStartThatIsNotBeforeTheShowIsRefusedInOneLine(int late) {
        LocalDate start = SHOW.plusDays(late);
        assertThat(refusal(Cards.everyDay(start, SHOW, Level.JUNIOR, 10)))
                .containsExactly("club/club.md:8: study would start on " + start
                        + ", and the show is on 2026-08-08; start at least a day before the show");
    }

    @Test
    void aWeekOfRestIsRefused() {
        assertThat(refusal(Cards.usual(SHOW.minusDays(9), SHOW, EnumSet.allOf(DayOfWeek.class), Level.SENIOR, 10)))
                .containsExactly(
                        "club/club.md:8: every day of the week is a rest day; leave at least one for the cards");
    }

    @Test
    void noTimeForTheCardsIsRefused() {
        assertThat(refusal(
                        new Request(SHOW.minusDays(9), SHOW, Set.of(), Level.SENIOR, Cards.deck(3), true, 0, Cards.AT)))
                .containsExactly("club/club.md:8: 0 minutes a day for the cards; give them at least one minute");
    }

    /** 4 for grades 3 and 4: Assessment for Effective Intervention 41 (2016) 131-140; the others are our own choice. */
    @ParameterizedTest
    @CsvSource({"PRIMARY,2", "JUNIOR,4", "INTERMEDIATE,5", "SENIOR,6"})
    void withDaysEnoughALevelHasItsUsualNumberOfNewCards(Level level, int newADay) {
        StudyPlan plan = plan(Cards.usual(SHOW.minusDays(60), SHOW, Set.of(), level, 40));
        assertThat(plan.newADay()).isEqualTo(newADay);
        assertThat(plan.days()).allMatch(day -> day.fresh().size() <= newADay);
        assertThat(plan.notes()).isEmpty();
    }

    @Test
    void aRestDayPushesAReviewToTheNextOpenDay() {
        // 9 July 2026 is a Thursday: due on Friday 10, Sunday 12, Thursday 16 and Friday 24 July.
        LocalDate thursday = LocalDate.of(2026, 7, 9);
        StudyPlan plan = plan(new Request(
                thursday,
                SHOW,
                Set.of(DayOfWeek.SUNDAY, DayOfWeek.FRIDAY),
                Level.JUNIOR,
                Cards.deck(1),
                false,
                15,
                Cards.AT));
        assertThat(seen(plan, new CardCode(1, 1)))
                .containsExactly(
                        thursday,
                        LocalDate.of(2026, 7, 11),
                        LocalDate.of(2026, 7, 13),
                        LocalDate.of(2026, 7, 16),
                        LocalDate.of(2026, 7, 25));
    }

    @Test
    void twoReviewsThatRestPushesOntoOneDayAreKeptApart() {
        LocalDate thursday = LocalDate.of(2026, 7, 9);
        StudyPlan plan = plan(new Request(
                thursday,
                SHOW,
                Set.of(DayOfWeek.FRIDAY, DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
                Level.JUNIOR,
                Cards.deck(1),
                false,
                15,
                Cards.AT));
        assertThat(seen(plan, new CardCode(1, 1)))
                .containsExactly(
                        thursday,
                        LocalDate.of(2026, 7, 13),
                        LocalDate.of(2026, 7, 14),
                        LocalDate.of(2026, 7, 16),
                        LocalDate.of(2026, 7, 27));
    }

    @Test
    void sundayAndWednesdayBringNothingNew() {
        StudyPlan plan = plan(Cards.usual(LocalDate.of(2026, 7, 9), SHOW, Set.of(), Level.JUNIOR, 40));
        assertThat(plan.days().stream()
                        .filter(day -> day.kind() == Kind.CATCH_UP)
                        .map(day -> day.date().getDayOfWeek()))
                .containsOnly(DayOfWeek.SUNDAY, DayOfWeek.WEDNESDAY)
                .hasSize(8);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            SUNDAY                                   | MONDAY,WEDNESDAY
            WEDNESDAY                                | SUNDAY,THURSDAY
            SATURDAY,SUNDAY                          | MONDAY,WEDNESDAY
            SUNDAY,MONDAY                            | TUESDAY,WEDNESDAY
            SUNDAY,MONDAY,TUESDAY                    | WEDNESDAY
            MONDAY,TUESDAY,THURSDAY,FRIDAY           | SUNDAY
            MONDAY,TUESDAY,THURSDAY,FRIDAY,SATURDAY  |
            """)
    void aCatchUpDayMovesOnFromADayOfRestAndLeavesDaysForNewCards(String rest, String catchUp) {
        assertThat(StudyDays.catchUpDays(week(rest))).isEqualTo(week(catchUp == null ? "" : catchUp));
    }

    private static Set<DayOfWeek> week(String names) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        names.lines()
                .flatMap(line -> List.of(line.split(",")).stream())
                .filter(name -> !name.isBlank())
                .forEach(name -> days.add(DayOfWeek.valueOf(name.strip())));
        return days;
    }

    @Test
    void aFirstYearSeniorWithThreeWeeksSeesSixtyCoreCardsAtLeastThreeTimesAgain() {
        StudyPlan plan = plan(Cards.usual(SHOW.minusDays(21), SHOW, Set.of(), Level.SENIOR, 60));

        assertThat(plan.cards()).hasSize(60);
        assertThat(plan.leftOut()).isEmpty();
        assertThat(plan.newADay()).isEqualTo(7);
        assertThat(plan.cards()).allMatch(card -> seen(plan, card.code()).size() >= 4);
        // The cautions and the first stops keep every review.
        assertThat(plan.cards().subList(0, 21))
                .allMatch(card -> seen(plan, card.code()).size() == 5);
        assertThat(plan.busiest() * StudyPlanner.SECONDS_A_CARD).isLessThanOrEqualTo(15 * 60);
        assertThat(plan.notes())
                .containsExactly(
                        "The days are few for so many cards: up to 7 new ones a day, not the usual 6.",
                        "The last 32 cards are seen fewer times, because the show comes first.",
                        "With more than 15 minutes a day there would be room for more.");
    }

    @Test
    void whenDaysAreShortTheEndOfTheRequestIsLeftOut() {
        List<Card> deck = Cards.deck(60);
        StudyPlan plan = plan(Cards.everyDay(SHOW.minusDays(6), SHOW, Level.SENIOR, 60));

        // Six days, on five of which cards can be new: the day before the show is for seeing them again.
        assertThat(plan.cards()).isEqualTo(deck.subList(0, 40));
        assertThat(plan.leftOut()).isEqualTo(deck.subList(40, 60));
        assertThat(plan.notes())
                .containsExactly(
                        "The days are few for so many cards: up to 8 new ones a day, not the usual 6.",
                        "The last 40 cards are seen fewer times, because the show comes first.",
                        "20 cards are left out, because the days are too few.");
    }

    @Test
    void fewMinutesMeanFewNewCardsADay() {
        Request request =
                new Request(SHOW.minusDays(60), SHOW, Set.of(), Level.SENIOR, Cards.deck(30), true, 5, Cards.AT);
        StudyPlan plan = plan(request);
        assertThat(plan.newADay()).isEqualTo(2);
        assertThat(plan.busiest() * StudyPlanner.SECONDS_A_CARD).isLessThanOrEqualTo(5 * 60);
        assertThat(plan.notes()).isEmpty();
    }

    @Test
    void aDayThatTakesLongerThanWasAskedIsNamed() {
        Request request =
                new Request(SHOW.minusDays(60), SHOW, Set.of(), Level.PRIMARY, Cards.deck(30), false, 1, Cards.AT);
        assertThat(plan(request).notes()).containsExactly("The busiest day has 5 cards: about 3 minutes, not 1.");
    }

    @Test
    void theDayBeforeTheShowIsTooLateForANewCard() {
        StudyPlan plan = plan(Cards.everyDay(SHOW.minusDays(1), SHOW, Level.SENIOR, 5));
        assertThat(plan.cards()).isEmpty();
        assertThat(plan.leftOut()).hasSize(5);
        assertThat(plan.notes()).containsExactly("There are too few days to learn new cards.");
    }

    @Test
    void aCardNamedTwiceIsPlannedOnce() {
        List<Card> twice = List.of(Cards.card(0), Cards.card(1), Cards.card(0));
        StudyPlan plan =
                plan(new Request(SHOW.minusDays(30), SHOW, Set.of(), Level.SENIOR, twice, false, 15, Cards.AT));
        assertThat(plan.cards()).containsExactly(Cards.card(0), Cards.card(1));
    }

    @Test
    void withoutCardsThereIsAnEmptyCalendar() {
        StudyPlan plan = plan(Cards.usual(SHOW.minusDays(3), SHOW, Set.of(), Level.SENIOR, 0));
        assertThat(plan.days()).hasSize(4).allMatch(day -> day.seen() == 0);
        assertThat(plan.notes()).isEmpty();
    }
}
