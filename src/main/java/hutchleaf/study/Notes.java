package hutchleaf.study;

import java.util.ArrayList;
import java.util.List;

/** What a reader of a plan should know, in plain words. */
final class Notes {
    private Notes() {}

    static List<String> of(StudyPlan plan, Schedule schedule, NewADay pace, NewADay inTime, int minutes) {
        if (plan.cards().isEmpty()) {
            return plan.leftOut().isEmpty() ? List.of() : List.of("There are too few days to learn new cards.");
        }
        List<String> notes = new ArrayList<>();
        int left = plan.leftOut().size();
        long shortened = schedule.shortened();
        if (plan.newADay() > pace.usual()) {
            notes.add("The days are few for so many cards: up to " + plan.newADay() + " new ones a day, not the usual "
                    + pace.usual() + ".");
        }
        if (shortened > 0) {
            notes.add((shortened == 1 ? "The last card is" : "The last " + shortened + " cards are")
                    + " seen fewer times, because the show comes first.");
        }
        if (left > 0) {
            notes.add((left == 1 ? "1 card is" : left + " cards are") + " left out, because the days are too few.");
        }
        if ((left > 0 || shortened > 0) && inTime.most() < pace.most()) {
            notes.add("With more than " + count(minutes, "minute") + " a day there would be room for more.");
        }
        int longest = (plan.busiest() * StudyPlanner.SECONDS_A_CARD + 59) / 60;
        if (longest > minutes) {
            notes.add("The busiest day has " + count(plan.busiest(), "card") + ": about " + count(longest, "minute")
                    + ", not " + minutes + ".");
        }
        return notes;
    }

    private static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
