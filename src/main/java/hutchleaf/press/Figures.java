package hutchleaf.press;

import java.util.Optional;

/** Where the press finds drawings: by their path in the content tree, for example {@code figures/eye.svg}. */
@FunctionalInterface
public interface Figures {
    /** The SVG's bytes, or empty when there is no such figure. */
    Optional<byte[]> svg(String path);
}
