package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/**
 * One row of the colour table.
 *
 * @param unsure names of the columns that are not to be printed as fact
 */
public record Colour(String name, String group, String eye, String nails, List<String> unsure, Place at) {
    public Colour {
        unsure = List.copyOf(unsure);
    }
}
