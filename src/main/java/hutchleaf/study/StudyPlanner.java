package hutchleaf.study;

import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.problem.Problems;
import hutchleaf.study.StudyPlan.Day;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Plans backwards from a show.
 *
 * <p>Cards are new in the order of the request, so many a day, and seen again after fixed gaps ({@link Reviews}). Where
 * the days are too few, more cards a day are new, up to what the level and the minutes bear; then the late cards lose
 * their last reviews; then cards are left out from the end of the request. A card is never new without being seen once
 * more before the show.
 */
public final class StudyPlanner {
    /** What one card takes, in seconds: say it aloud, turn it, check it. Common practice (20 to 30), no source. */
    static final int SECONDS_A_CARD = 25;

    private final Request request;
    private final List<Card> cards;
    private final StudyDays days;

    private StudyPlanner(Request request) {
        this.request = request;
        this.cards = once(request.cards());
        this.days = new StudyDays(request);
    }

    /**
     * A plan for every day to the show.
     *
     * @return empty, with a problem, where the study would not start before the show, every day is a day of rest, or
     *     no minute is given to the cards
     */
    public static Optional<StudyPlan> plan(Request request, Problems problems) {
        return possible(request, problems) ? Optional.of(new StudyPlanner(request).plan()) : Optional.empty();
    }

    private static boolean possible(Request request, Problems problems) {
        if (!request.start().isBefore(request.show())) {
            problems.add(
                    request.at(),
                    "study would start on " + request.start() + ", and the show is on " + request.show(),
                    "start at least a day before the show");
        } else if (request.restDays().size() == DayOfWeek.values().length) {
            problems.add(request.at(), "every day of the week is a rest day", "leave at least one for the cards");
        } else if (request.minutes() < 1) {
            problems.add(
                    request.at(), request.minutes() + " minutes a day for the cards", "give them at least one minute");
        } else {
            return true;
        }
        return false;
    }

    private static List<Card> once(List<Card> cards) {
        Map<CardCode, Card> byCode = new LinkedHashMap<>();
        cards.forEach(card -> byCode.putIfAbsent(card.code(), card));
        return List.copyOf(byCode.values());
    }

    private StudyPlan plan() {
        NewADay pace = NewADay.of(request.level());
        int bearable = request.minutes() * 60 / SECONDS_A_CARD;
        // In the thick of it each card is seen on five days: when new, and after each gap.
        NewADay inTime = pace.within(bearable / (1 + Reviews.GAPS.size()));
        Schedule schedule = IntStream.rangeClosed(inTime.usual(), inTime.most())
                .mapToObj(perDay -> Schedule.of(cards, perDay, days))
                .filter(tried -> tried.isWhole(cards.size()))
                .findFirst()
                .orElseGet(() -> Schedule.of(cards, inTime.most(), days));
        int placed = schedule.turns().size();
        StudyPlan plan = new StudyPlan(
                request.start(),
                request.show(),
                schedule.perDay(),
                days.all().stream().map(date -> day(date, schedule)).toList(),
                cards.subList(0, placed),
                cards.subList(placed, cards.size()),
                List.of());
        List<String> notes = Notes.of(plan, schedule, pace, inTime, request.minutes());
        return new StudyPlan(
                plan.start(), plan.show(), plan.newADay(), plan.days(), plan.cards(), plan.leftOut(), notes);
    }

    private Day day(LocalDate date, Schedule schedule) {
        List<CardCode> fresh = new ArrayList<>();
        List<CardCode> again = new ArrayList<>();
        for (Schedule.Turns turns : schedule.turns()) {
            if (turns.first().equals(date)) {
                fresh.add(turns.card());
            } else if (turns.again().contains(date)) {
                again.add(turns.card());
            }
        }
        return new Day(date, days.toGo(date), days.kind(date), fresh, again);
    }
}
