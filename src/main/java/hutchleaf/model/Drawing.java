package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A figure of the content tree.
 *
 * @param file path from the content root, for example {@code figures/eye-normal.svg}
 * @param width of its box, in units of its own
 * @param height of its box, in the same units
 * @param smallest the narrowest it may be printed, in millimetres; 0 where it does not say
 * @param labels the parts it can point to
 */
public record Drawing(String file, double width, double height, double smallest, List<Label> labels) {
    private static final String SMALL = "-small.svg";

    /**
     * A part that a line can lead to.
     *
     * @param word what it is called
     * @param from the youngest level that sees it
     * @param x where the line ends, in the units of the figure from its left edge
     * @param y the same from its upper edge
     * @param at the line of the file it stands on
     */
    public record Label(String word, Level from, double x, double y, Place at) {}

    public Drawing {
        labels = List.copyOf(labels);
    }

    /** Its width divided by its height. */
    public double ratio() {
        return width / height;
    }

    /** The labels a level sees, each word once. */
    public List<Label> labels(Level level) {
        Map<String, Label> words = new LinkedHashMap<>();
        labels.stream()
                .filter(label -> label.from().compareTo(level) <= 0)
                .forEach(label -> words.putIfAbsent(label.word(), label));
        return List.copyOf(words.values());
    }

    /** The file of the same subject in fewer, heavier marks, for narrow places. */
    public static String small(String file) {
        return file.replaceAll("\\.svg$", SMALL);
    }

    /** Whether a file is such a twin. */
    public static boolean isSmall(String file) {
        return file.endsWith(SMALL);
    }

    /** The file that a twin is of. */
    public static String large(String small) {
        return small.replace(SMALL, ".svg");
    }
}
