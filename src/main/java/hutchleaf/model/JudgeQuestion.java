package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/**
 * A question a judge may ask.
 *
 * @param about whether it asks about the member's own rabbit
 * @param enough how many of the points a full answer must hold, 1 to the number of points
 */
public record JudgeQuestion(Words question, Levels levels, Place at, About about, int enough, List<Words> points) {
    /** Whether a question is about the member's own rabbit or about rabbits. */
    public enum About {
        OWN_RABBIT,
        RABBITS
    }

    public JudgeQuestion {
        points = List.copyOf(points);
    }
}
