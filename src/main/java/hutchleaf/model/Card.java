package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.Optional;

/**
 * One flashcard.
 *
 * @param need whether a level's deck needs it first
 * @param picture printed beside the question
 */
public record Card(
        CardCode code,
        Need need,
        Levels levels,
        Place at,
        Words question,
        Optional<Block.Picture> picture,
        Words answer) {
    /** Core cards are the 30 to 60 that a level learns first. */
    public enum Need {
        CORE,
        MORE
    }
}
