package hutchleaf.problem;

import java.util.Comparator;

/**
 * One thing an author should mend.
 *
 * @param what what is wrong, showing the value found
 * @param mend what to do about it, showing the values allowed
 */
public record Problem(Place place, Severity severity, String what, String mend) implements Comparable<Problem> {
    /** An error stops the run before anything is written; a warning is only shown. */
    public enum Severity {
        ERROR,
        WARNING
    }

    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::place)
            .thenComparing(Problem::severity)
            .thenComparing(Problem::what)
            .thenComparing(Problem::mend);

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }

    /** The one line that a person reads: {@code file:line: what; how to mend it}. */
    @Override
    public String toString() {
        String said = place + ": " + what + "; " + mend;
        return severity == Severity.WARNING ? "warning: " + said : said;
    }
}
