package hutchleaf.press;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a drawing may hold: shapes and paint that refer to nothing outside it. The list names what is allowed, so that
 * a kind of element nobody thought of is refused.
 */
final class SvgRules {
    private static final Set<String> SHAPES = Set.of(
            "svg",
            "g",
            "path",
            "circle",
            "ellipse",
            "rect",
            "line",
            "polyline",
            "polygon",
            "defs",
            "use",
            "symbol",
            "clipPath",
            "mask",
            "marker",
            "pattern",
            "linearGradient",
            "radialGradient",
            "stop",
            "title",
            "desc");

    /** {@code url(} that is not {@code url(#local)}, quoted or not. */
    private static final Pattern FOREIGN_URL =
            Pattern.compile("url\\s*\\((?!\\s*[\"']?\\s*#)", Pattern.CASE_INSENSITIVE);

    /** What is wrong with a part of a drawing, and how to mend it. */
    record Fault(String what, String mend) {}

    private SvgRules() {}

    static Optional<Fault> element(String name) {
        if (SHAPES.contains(name)) {
            return Optional.empty();
        }
        // Text would be drawn in whatever font the machine has, and differ from one to the next.
        String mend = name.equals("text") || name.equals("tspan")
                ? "lay the words over the figure in the page, or turn them into outlines"
                : "save it as plain SVG of shapes only";
        return Optional.of(new Fault("a drawing must not hold <" + name + ">", mend));
    }

    static Optional<Fault> attribute(String name, String value) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.startsWith("on")) {
            return Optional.of(new Fault("a drawing must not hold the event '" + name + "'", "leave it out"));
        }
        if (lower.equals("xml:base")) {
            return Optional.of(new Fault("a drawing must not hold xml:base", "leave it out"));
        }
        if ((lower.equals("href") || lower.endsWith(":href")) && !value.strip().startsWith("#")) {
            return Optional.of(outside(value));
        }
        // An escape could spell url( so that the pattern misses it.
        if (FOREIGN_URL.matcher(value).find() || (lower.equals("style") && value.contains("\\"))) {
            return Optional.of(outside(value));
        }
        return Optional.empty();
    }

    private static Fault outside(String value) {
        String shown = value.length() > 80 ? value.substring(0, 80) + "…" : value;
        return new Fault("a drawing must not reach outside itself: '" + shown + "'", "refer to #parts of its own only");
    }
}
