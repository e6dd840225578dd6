package hutchleaf.problem;

import java.util.Comparator;

/**
 * A line of a file that an author can open.
 *
 * @param file path with forward slashes, as the author knows it, for example {@code content/routine/ears.md}
 * @param line 1-based; 0 speaks of the file as a whole
 */
public record Place(String file, int line) implements Comparable<Place> {
    private static final Comparator<Place> ORDER =
            Comparator.comparing(Place::file).thenComparingInt(Place::line);

    public Place {
        if (line < 0) {
            throw new IllegalArgumentException("line " + line + " of " + file);
        }
    }

    /** The file as a whole. */
    public static Place whole(String file) {
        return new Place(file, 0);
    }

    /** The same file, another line (1-based). */
    public Place atLine(int other) {
        return new Place(file, other);
    }

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }

    /** {@code file:line}, or the file alone where no line is meant. */
    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line;
    }
}
