package hutchleaf.rabbit;

import hutchleaf.model.Level;
import java.util.Arrays;
import java.util.Optional;

/** The five body types: how a level describes each. Consistent with {@code content/body-types}. */
enum Shape {
    COMPACT(
            "compact",
            "it is short and round",
            "it is short, round and wide",
            "width, depth and length are nearly equal, and the back is highest over the hips"),
    COMMERCIAL(
            "commercial",
            "it has a round, full rump",
            "it is as deep as it is wide, with full hips",
            "it is as deep as it is wide, and the back is highest over the hips"),
    SEMI_ARCH(
            "semi-arch",
            "it rises at the back",
            "it is low at the shoulders, with a rise behind them",
            "it is low in the shoulder, and the rise begins behind it and rounds to the tail"),
    FULL_ARCH(
            "full-arch",
            "it is one long curve",
            "its back is one curve from the neck to the tail",
            "one unbroken arch runs from the nape to the tail"),
    CYLINDRICAL(
            "cylindrical",
            "it is long and level",
            "it is long, narrow and level",
            "it is level, with one width and one depth from shoulder to hip");

    private final String written;
    private final String primary;
    private final String junior;
    private final String older;

    Shape(String written, String primary, String junior, String older) {
        this.written = written;
        this.primary = primary;
        this.junior = junior;
        this.older = older;
    }

    static Optional<Shape> of(String written) {
        return Arrays.stream(values())
                .filter(shape -> shape.written.equals(written))
                .findFirst();
    }

    /** What is seen, as a clause: {@code it is short and round}. */
    String seen(Level level) {
        return switch (level) {
            case PRIMARY -> primary;
            case JUNIOR -> junior;
            case INTERMEDIATE, SENIOR -> older;
        };
    }
}
