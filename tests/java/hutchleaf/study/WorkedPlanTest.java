package hutchleaf.study;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.problem.Problems;
import hutchleaf.study.StudyPlan.Day;
import hutchleaf.study.StudyPlan.Kind;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A plan worked by hand: 60 cards, 4 new a day, each again after 1, 3, 7 and 15 days, show on Saturday 8 August 2026.
 * New cards on days 1 to 15, the last review on day 30, the show on day 31; so day 1 is Thursday 9 July 2026.
 */
final class WorkedPlanTest {
    private static final LocalDate START = LocalDate.of(2026, 7, 9);
    private static final LocalDate SHOW = LocalDate.of(2026, 8, 8);
    private static final StudyPlan PLAN = plan(START);

    private static StudyPlan plan(LocalDate start) {
        Problems problems = new Problems();
        StudyPlan plan = StudyPlanner.plan(Cards.everyDay(start, SHOW, Level.JUNIOR, 60), problems)
                .orElseThrow();
        assertThat(problems.sorted()).isEmpty();
        return plan;
    }

    @Test
    void theCalendarIsAsWorked() {
        assertThat(START.getDayOfWeek()).isEqualTo(DayOfWeek.THURSDAY);
        assertThat(SHOW.getDayOfWeek()).isEqualTo(DayOfWeek.SATURDAY);
        assertThat(PLAN.days()).hasSize(31);
        assertThat(PLAN.days().get(0).toGo()).isEqualTo(30);
        assertThat(PLAN.days().get(30)).isEqualTo(new Day(SHOW, 0, Kind.SHOW, List.of(), List.of()));
    }

    @ParameterizedTest
    @CsvSource({"1,1,0", "2,3,4", "4,7,8", "8,15,12", "16,16,16", "17,18,12", "19,22,8", "23,30,4", "31,31,0"})
    void theReviewsOfEveryDayAreAsWorked(int from, int to, int reviews) {
        for (int day = from; day <= to; day++) {
            assertThat(PLAN.days().get(day - 1).again()).as("day " + day).hasSize(reviews);
        }
    }

    @Test
    void fourCardsAreNewOnEachOfTheFirstFifteenDays() {
        List<Card> deck = Cards.deck(60);
        for (int day = 1; day <= 31; day++) {
            assertThat(PLAN.days().get(day - 1).fresh())
                    .as("day " + day)
                    .isEqualTo(
                            day > 15
                                    ? List.of()
                                    : deck.subList(4 * day - 4, 4 * day).stream()
                                            .map(Card::code)
                                            .toList());
        }
        assertThat(PLAN.newADay()).isEqualTo(4);
    }

    @Test
    void theSumsAreAsWorked() {
        assertThat(PLAN.days().stream().mapToInt(day -> day.fresh().size()).sum())
                .isEqualTo(60);
        assertThat(PLAN.days().stream().mapToInt(day -> day.again().size()).sum())
                .isEqualTo(240);
        assertThat(PLAN.days().stream().mapToInt(Day::seen).sum()).isEqualTo(300);
        assertThat(PLAN.busiest()).isEqualTo(16);
        for (int day = 8; day <= 16; day++) {
            assertThat(PLAN.days().get(day - 1).seen()).as("day " + day).isEqualTo(16);
        }
        assertThat(PLAN.leftOut()).isEmpty();
        assertThat(PLAN.notes()).isEmpty();
    }

    @Test
    void aDayLessRaisesTheCardsADay() {
        StudyPlan shorter = plan(START.plusDays(1));
        assertThat(shorter.newADay()).isEqualTo(5);
        assertThat(shorter.leftOut()).isEmpty();
        assertThat(shorter.days().stream().mapToInt(day -> day.again().size()).sum())
                .isEqualTo(240);
        assertThat(shorter.notes())
                .containsExactly("The days are few for so many cards: up to 5 new ones a day, not the usual 4.");
    }
}
