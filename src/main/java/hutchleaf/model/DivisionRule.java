package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;
import java.util.Optional;

/**
 * Which members belong to a division under a rule set.
 *
 * @param from youngest age, grade or year, included
 * @param to oldest, included; empty where the band is open
 */
public record DivisionRule(
        String ruleSet,
        String division,
        Level level,
        By by,
        Optional<Integer> from,
        Optional<Integer> to,
        Terms terms) {
    /** What a rule set counts. */
    public enum By {
        AGE,
        GRADE,
        EXPERIENCE
    }

    /** The day it is counted, whether its members are placed against each other, where the rule was read, and its row. */
    public record Terms(String countedOn, boolean competes, List<String> sources, Place at) {
        public Terms {
            sources = List.copyOf(sources);
        }
    }
}
