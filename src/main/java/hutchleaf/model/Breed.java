package hutchleaf.model;

import java.util.List;

/**
 * One row of the breed table.
 *
 * @param classes 4 or 6
 * @param colours every colour of the breed; empty where they are not all known
 */
public record Breed(
        String name,
        String bodyType,
        String pose,
        String ears,
        String fur,
        int classes,
        Weights weights,
        Showing showing,
        List<String> colours,
        Basis basis) {
    public Breed {
        colours = List.copyOf(colours);
    }

    /**
     * Senior weights in pounds, for example {@code 3.5 to 5.5}; empty where none is known.
     *
     * @param unit in which they are printed
     */
    public record Weights(String buck, String doe, WeightUnit unit) {
        /** Printed in pounds, as the table has them. */
        public Weights(String buck, String doe) {
            this(buck, doe, WeightUnit.LB);
        }
    }

    /** The same row, its weights to be printed in a unit. */
    public Breed in(WeightUnit unit) {
        return new Breed(
                name,
                bodyType,
                pose,
                ears,
                fur,
                classes,
                new Weights(weights.buck(), weights.doe(), unit),
                showing,
                colours,
                basis);
    }

    /** What a member says when showing it, and what judges look for. */
    public record Showing(String say, String judgesLookFor) {}
}
