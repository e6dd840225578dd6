package hutchleaf.study;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Level;
import hutchleaf.problem.Problems;
import hutchleaf.study.StudyPlan.Day;
import hutchleaf.study.StudyPlan.Kind;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** What holds for every plan, over many random requests; the seed stands in the message. */
final class PlanLawsTest {
    private static final int[] GAPS = {1, 3, 7, 15};
    private static final List<Level> LEVELS = List.of(Level.values());

    private static Request random(Random random) {
        LocalDate show = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(400));
        Set<DayOfWeek> rest = EnumSet.noneOf(DayOfWeek.class);
        for (int day = random.nextInt(7); day > 0; day--) {
            rest.add(DayOfWeek.of(1 + random.nextInt(7)));
        }
        return new Request(
                show.minusDays(1 + random.nextInt(70)),
                show,
                rest,
                LEVELS.get(random.nextInt(LEVELS.size())),
                Cards.deck(random.nextInt(120)),
                random.nextBoolean(),
                1 + random.nextInt(40),
                Cards.AT);
    }

    private static StudyPlan plan(Request request) {
        return StudyPlanner.plan(request, new Problems()).orElseThrow();
    }

    @RepeatedTest(400)
    void everyPlanKeepsItsPromises(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Request request = random(new Random(seed));
        StudyPlan plan = plan(request);
        String what = "seed " + seed + ", " + request.start() + " to " + request.show();

        assertThat(plan.days()).as(what).extracting(Day::date).isEqualTo(calendar(request));
        for (Day day : plan.days()) {
            assertThat(day.date().plusDays(day.toGo())).as(what).isEqualTo(request.show());
            assertThat(day.kind() == Kind.SHOW).as(what).isEqualTo(day.toGo() == 0);
            assertThat(day.kind() == Kind.REST)
                    .as(what + " " + day)
                    .isEqualTo(day.toGo() > 0
                            && request.restDays().contains(day.date().getDayOfWeek()));
            if (day.kind() != Kind.STUDY) {
                assertThat(day.fresh()).as(what + " " + day).isEmpty();
            }
            if (day.kind() == Kind.REST || day.kind() == Kind.SHOW) {
                assertThat(day.again()).as(what + " " + day).isEmpty();
            }
            assertThat(day.fresh().size()).as(what + " " + day).isLessThanOrEqualTo(plan.newADay());
            assertThat(all(day)).as(what + " " + day).doesNotHaveDuplicates();
        }
        assertThat(Stream.concat(plan.cards().stream(), plan.leftOut().stream()))
                .as(what)
                .isEqualTo(request.cards());
        assertThat(plan.days().stream().flatMap(day -> day.fresh().stream()))
                .as(what + ": each card new once, in order")
                .containsExactlyElementsOf(plan.cards().stream().map(Card::code).toList());
        int reviews = 0;
        for (Card card : plan.cards()) {
            reviews += assertGaps(plan, card.code(), what);
        }
        assertThat(plan.days().stream().mapToInt(Day::seen).sum())
                .as(what + ": the sums agree")
                .isEqualTo(plan.cards().size() + reviews);
        assertThat(plan.busiest() * StudyPlanner.SECONDS_A_CARD <= request.minutes() * 60
                        || plan.notes().stream().anyMatch(note -> note.startsWith("The busiest day has")))
                .as(what + ": the busiest day has " + plan.busiest() + " in " + request.minutes() + " minutes")
                .isTrue();
        assertThat(plan.leftOut().isEmpty() || !plan.notes().isEmpty()).as(what).isTrue();
        assertThat(plan(request)).as(what + ": the same again").isEqualTo(plan);
    }

    /** From the start to the show, one by one. */
    private static List<LocalDate> calendar(Request request) {
        List<LocalDate> dates = new ArrayList<>();
        for (LocalDate date = request.start(); !date.isAfter(request.show()); date = date.plusDays(1)) {
            dates.add(date);
        }
        return dates;
    }

    private static List<CardCode> all(Day day) {
        return Stream.concat(day.fresh().stream(), day.again().stream()).toList();
    }

    /** Each review comes at least its gap after the first day, on the first open day that serves. */
    private static int assertGaps(StudyPlan plan, CardCode card, String what) {
        LocalDate first = plan.days().stream()
                .filter(day -> day.fresh().contains(card))
                .findFirst()
                .orElseThrow()
                .date();
        List<LocalDate> again = plan.days().stream()
                .filter(day -> day.again().contains(card))
                .map(Day::date)
                .toList();
        assertThat(again).as(what + ", card " + card).hasSizeBetween(1, 4);
        LocalDate before = first;
        for (int i = 0; i < again.size(); i++) {
            LocalDate due = first.plusDays(GAPS[i]);
            LocalDate date = again.get(i);
            assertThat(date).as(what + ", card " + card + ", review " + (i + 1)).isAfterOrEqualTo(due);
            LocalDate earliest = due.isAfter(before) ? due : before.plusDays(1);
            assertThat(plan.days())
                    .as(what + ", card " + card + ", review " + (i + 1) + ": an open day was passed by")
                    .noneMatch(day ->
                            !day.date().isBefore(earliest) && day.date().isBefore(date) && day.kind() != Kind.REST);
            before = date;
        }
        return again.size();
    }

    @RepeatedTest(200)
    void moreDaysNeverGiveFewerCards(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        Request request = random(random);
        int more = 1 + random.nextInt(10);
        int cards = plan(request).cards().size();
        assertThat(plan(moved(request, more, 0)).cards())
                .as("seed " + seed + ", " + more + " days earlier")
                .hasSizeGreaterThanOrEqualTo(cards);
        assertThat(plan(moved(request, 0, more)).cards())
                .as("seed " + seed + ", show " + more + " days later")
                .hasSizeGreaterThanOrEqualTo(cards);
    }

    private static Request moved(Request from, int earlier, int later) {
        return new Request(
                from.start().minusDays(earlier),
                from.show().plusDays(later),
                from.restDays(),
                from.level(),
                from.cards(),
                from.catchUpDays(),
                from.minutes(),
                from.at());
    }
}
