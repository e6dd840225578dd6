package hutchleaf.study;

import hutchleaf.study.StudyPlan.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * When the stops are practised: every group of stops with a soft toy first and then with the rabbit, later all of them.
 * Common practice, no source: three short sessions a week, so that the rabbit has a day off between two.
 *
 * @param withRabbit false while it is a soft toy
 * @param stops the stops of the session, in order; all of them towards the end
 */
public record RabbitTime(boolean withRabbit, List<Integer> stops) {
    private static final int DAYS_APART = 2;
    private static final int LONGEST_GROUP = 5;

    public RabbitTime {
        stops = List.copyOf(stops);
    }

    /**
     * The sessions by day.
     *
     * @param stops those that the member shows, in order
     */
    public static Map<LocalDate, RabbitTime> of(StudyPlan plan, List<Integer> stops) {
        List<LocalDate> days = days(plan);
        List<RabbitTime> sessions = sessions(groups(stops, days.size()), stops);
        Map<LocalDate, RabbitTime> byDay = new TreeMap<>();
        for (int index = 0; index < days.size(); index++) {
            RabbitTime all = new RabbitTime(true, stops);
            byDay.put(days.get(index), index < sessions.size() ? sessions.get(index) : all);
        }
        return byDay;
    }

    /** Days with a session: none on a rest day, none on two days running, none on the eve of the show. */
    private static List<LocalDate> days(StudyPlan plan) {
        List<LocalDate> days = new ArrayList<>();
        for (StudyPlan.Day day : plan.days()) {
            boolean open = day.kind() == Kind.STUDY || day.kind() == Kind.CATCH_UP;
            boolean rested = days.isEmpty()
                    || !day.date().isBefore(days.get(days.size() - 1).plusDays(DAYS_APART));
            if (open && rested && day.toGo() > 1 && days.size() < mostUpTo(day, plan)) {
                days.add(day.date());
            }
        }
        return days;
    }

    /** Three a week, counted from the first day. */
    private static long mostUpTo(StudyPlan.Day day, StudyPlan plan) {
        long week = plan.start().until(day.date(), java.time.temporal.ChronoUnit.DAYS) / 7;
        return 3 * (week + 1);
    }

    /** Neighbouring stops together: as few as five at a time, more where the days are short. */
    private static List<List<Integer>> groups(List<Integer> stops, int days) {
        int wanted = (stops.size() + LONGEST_GROUP - 1) / LONGEST_GROUP;
        int groups = Math.max(1, Math.min(wanted, (days - 1) / 2));
        List<List<Integer>> parts = new ArrayList<>();
        for (int group = 0; group < groups; group++) {
            int from = group * stops.size() / groups;
            int to = (group + 1) * stops.size() / groups;
            parts.add(stops.subList(from, to));
        }
        return parts;
    }

    private static List<RabbitTime> sessions(List<List<Integer>> groups, List<Integer> stops) {
        List<RabbitTime> sessions = new ArrayList<>();
        for (List<Integer> group : groups) {
            sessions.add(new RabbitTime(false, group));
            sessions.add(new RabbitTime(true, group));
        }
        sessions.add(new RabbitTime(false, stops));
        return sessions;
    }
}
