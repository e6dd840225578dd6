package hutchleaf.page;

import hutchleaf.edition.Packet;
import hutchleaf.model.CardCode;
import hutchleaf.page.PacketView.DayView;
import hutchleaf.page.PacketView.Pile;
import hutchleaf.page.PacketView.PlanView;
import hutchleaf.page.PacketView.Week;
import hutchleaf.study.RabbitTime;
import hutchleaf.study.StudyPlan;
import hutchleaf.study.StudyPlan.Kind;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Makes the calendar of a study plan. The cards that are new on one day are a pile and stay together. */
final class PlanPages {
    private static final int DAYS = 7;

    /** Heights in millimetres. */
    private static final double HEAD = 52;

    private static final double FOOT = 24;
    private static final double HIGHEST_ROW = 34;
    private static final int LONG_PLAN = 7;

    private final Packet packet;
    private final StudyPlan plan;
    private final Look look;
    private final Map<CardCode, Integer> pileOf = new HashMap<>();
    private final List<Pile> piles = new ArrayList<>();
    private final Map<LocalDate, StudyPlan.Day> days = new TreeMap<>();
    private final Map<LocalDate, RabbitTime> practice;

    private PlanPages(Packet packet, Look look) {
        this.packet = packet;
        this.plan = packet.plan();
        this.look = look;
        this.practice = RabbitTime.of(plan, packet.edition().order().stops());
        for (StudyPlan.Day day : plan.days()) {
            days.put(day.date(), day);
            if (!day.fresh().isEmpty()) {
                int no = piles.size() + 1;
                day.fresh().forEach(code -> pileOf.put(code, no));
                piles.add(new Pile(
                        no, day.fresh().stream().map(CardCode::toString).collect(Collectors.joining(", "))));
            }
        }
    }

    static PlanView of(Packet packet, Look look) {
        return new PlanPages(packet, look).view();
    }

    private PlanView view() {
        List<Week> weeks = weeks();
        double room = look.frame().liveHeight() - HEAD - FOOT;
        int onAPage = Math.min(weeks.size(), LONG_PLAN);
        int left = plan.days().get(0).toGo();
        return new PlanView(
                left + (left == 1 ? " day" : " days") + " to the show",
                plan.cards().size() + " cards, " + (look.primary() ? "a few" : "up to " + plan.newADay())
                        + " new on a day",
                List.of("Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"),
                weeks,
                Math.min(HIGHEST_ROW, Math.floor(room / onAPage * 10) / 10),
                piles,
                plan.notes(),
                "busiest day: " + plan.busiest() + " cards");
    }

    private List<Week> weeks() {
        List<Week> weeks = new ArrayList<>();
        LocalDate sunday = plan.start().with(TemporalAdjusters.previousOrSame(DayOfWeek.SUNDAY));
        while (!sunday.isAfter(plan.show())) {
            LocalDate first = sunday;
            weeks.add(new Week(IntStream.range(0, DAYS)
                    .mapToObj(no -> day(first.plusDays(no)))
                    .toList()));
            sunday = sunday.plusDays(DAYS);
        }
        return weeks;
    }

    private DayView day(LocalDate date) {
        StudyPlan.Day day = days.get(date);
        boolean named = date.getDayOfMonth() == 1 || date.equals(plan.start());
        String shown = named ? PrintedDate.small(date) : String.valueOf(date.getDayOfMonth());
        if (day == null) {
            return new DayView("outside", shown, "", 0, "", "", "");
        }
        RabbitTime session = practice.get(date);
        return new DayView(
                kind(day.kind()),
                shown,
                day.toGo() == 0 ? "" : day.toGo() + " to go",
                day.fresh().isEmpty() ? 0 : pile(day.fresh().get(0)),
                again(day),
                session == null ? "" : session.withRabbit() ? "rabbit" : "toy",
                session == null ? "" : span(session.stops()));
    }

    private int pile(CardCode code) {
        return pileOf.getOrDefault(code, 0);
    }

    /** The piles seen again, the newest first. */
    private String again(StudyPlan.Day day) {
        return day.again().stream()
                .map(this::pile)
                .distinct()
                .sorted((one, other) -> other - one)
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
    }

    private String span(List<Integer> stops) {
        return stops.equals(packet.edition().order().stops())
                ? "all"
                : stops.get(0) + "\u2013" + stops.get(stops.size() - 1);
    }

    private static String kind(Kind kind) {
        return switch (kind) {
            case STUDY -> "study";
            case CATCH_UP -> "catchup";
            case REST -> "rest";
            case SHOW -> "show";
        };
    }
}
