package hutchleaf.rabbit;

import hutchleaf.model.Level;
import java.util.List;

/** The comments a member builds for the last stop: by body type, from head to tail. */
public final class Comments {
    /** The grades of a comment, best first; a member draws a ring round one. */
    public static final List<String> GRADES = List.of("excellent", "good", "fair", "poor");

    /** One comment: a sentence to tick, or one to build. */
    public sealed interface Comment {}

    /** A whole sentence that a primary member ticks when it is true: {@code I like its smooth, clean fur.} */
    public record Tick(String sentence) implements Comment {}

    /**
     * A comment to build from a part, a grade and a reason.
     *
     * @param part as it is named aloud: {@code hindquarters}
     * @param praise what earns a high grade on this body type
     * @param lookFor what lowers it
     * @param start the sentence to finish: {@code The hindquarters are …, because …}
     */
    public record Build(String part, String praise, String lookFor, String start) implements Comment {}

    private Comments() {}

    /** Two sentences to tick for primary, three comments to build for junior, five for the older levels. */
    public static List<Comment> of(Findings findings, Level level) {
        return List.of();
    }
}
