package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/**
 * The slip that primary gets in place of a score.
 *
 * @param ticks what a judge may tick, said by the child
 */
public record WentWell(String title, Place at, List<Words> ticks) {
    public WentWell {
        ticks = List.copyOf(ticks);
    }
}
