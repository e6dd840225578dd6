package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/**
 * One row of the breed table.
 *
 * @param classes 4 or 6
 * @param unsure names of the columns that are not to be printed as fact
 */
public record Breed(
        String name,
        String bodyType,
        String pose,
        String ears,
        String fur,
        int classes,
        Weights weights,
        List<String> unsure,
        Place at) {
    /** Senior weights in pounds as printed, for example {@code 3.5 to 5.5}; empty where none is known. */
    public record Weights(String buck, String doe) {}

    public Breed {
        unsure = List.copyOf(unsure);
    }
}
