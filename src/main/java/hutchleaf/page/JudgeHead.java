package hutchleaf.page;

import java.util.Optional;

/**
 * What the head of every page of a judge's paper says.
 *
 * @param division its name, where that is another than the level's
 * @param whole the date with its day of the week
 * @param date short enough for a line on a form
 * @param by {@code Judge 1 of 2}, or {@code Judge 1} where there is one
 */
record JudgeHead(String club, String show, Optional<String> division, String whole, String date, int judge, String by) {
    /** What 10 pt gets onto the shortest line for the show, 45 mm, and 12 pt bold into the head of a list, 140 mm: ems. */
    private static final double FORM = 12.8;

    private static final double HEAD = 31;

    static JudgeHead of(JudgedClass shown) {
        return new JudgeHead(
                shown.show().club(),
                Shortened.to(shown.show().name(), HEAD),
                Optional.of(shown.division())
                        .filter(name -> !name.equalsIgnoreCase(shown.level().title())),
                PrintedDate.whole(shown.show().date()),
                PrintedDate.small(shown.show().date()) + " "
                        + shown.show().date().getYear(),
                shown.judging().judge(),
                "Judge " + shown.judging().judge()
                        + (shown.judging().judges() > 1
                                ? " of " + shown.judging().judges()
                                : ""));
    }

    /** The same with a show's name that a line on a form can hold. */
    JudgeHead onAForm() {
        return new JudgeHead(club, Shortened.to(show, FORM), division, whole, date, judge, by);
    }
}
