package hutchleaf.model;

import java.util.List;

/**
 * One row of the colour table.
 *
 * @param unsure names of the columns that are not to be printed as fact
 */
public record Colour(String name, String group, String eye, String nails, List<String> unsure) {
    public Colour {
        unsure = List.copyOf(unsure);
    }
}
