package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/**
 * A number with its unit and its sources.
 *
 * @param low as written, for example {@code 101.5}
 * @param high the same as low for a single value
 */
public record Fact(String id, String low, String high, String unit, List<String> sources, Place at) {
    public Fact {
        sources = List.copyOf(sources);
    }

    /** As it is printed in a sentence: {@code 31 to 33 days}. */
    public String printed() {
        String number = low.equals(high) ? low : low + " to " + high;
        return (number + " " + unit).strip();
    }
}
