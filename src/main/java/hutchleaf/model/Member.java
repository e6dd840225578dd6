package hutchleaf.model;

import hutchleaf.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A member of a club, with a division and one rabbit or more.
 *
 * @param born used for ages, never printed; empty where the roster gives only a grade
 * @param years in a club, this one counted
 * @param study the level whose words they study: their division's, or a lower one that the roster names
 * @param lastYear the level of their division a year ago; empty for who was in none
 * @param needs how their paper is printed, and what helps them at the table
 * @param rabbits in the order of the roster; the first is the one they show
 * @param at their first line of the roster
 */
public record Member(
        String name,
        Optional<LocalDate> born,
        Optional<Integer> years,
        Division division,
        Level study,
        boolean firstYear,
        Optional<Level> lastYear,
        Needs needs,
        List<Rabbit> rabbits,
        Place at) {
    /**
     * Where a member competes.
     *
     * @param name as the rule set calls it, for example {@code Youngest}
     * @param why in plain words, with no birth date: {@code 8 years old on 1 September 2025}
     * @param competes whether its members are placed against each other
     * @param age whole years on the show day; empty where only a grade is known
     */
    public record Division(String name, Level level, String why, boolean competes, Optional<Integer> age) {}

    public Member {
        rabbits = List.copyOf(rabbits);
    }

    /** All names but the last, or the only one. */
    public String firstName() {
        int end = name.lastIndexOf(' ');
        return end < 0 ? name : name.substring(0, end);
    }
}
