package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/**
 * What a row of data stands on.
 *
 * @param sources ids of {@code sources.md}
 * @param unsure names of the columns that are not to be printed as fact
 */
public record Basis(List<String> sources, List<String> unsure, Place at) {
    public Basis {
        sources = List.copyOf(sources);
        unsure = List.copyOf(unsure);
    }

    /** Whether a column of the row may be printed as fact. */
    public boolean sure(String column) {
        return !unsure.contains(column);
    }
}
