package hutchleaf.proof;

import hutchleaf.problem.Problem;
import java.util.Comparator;

/** One thing the proofreader found, and the rule that found it. */
public record Finding(Rule rule, Problem problem) implements Comparable<Finding> {
    private static final Comparator<Finding> ORDER =
            Comparator.comparing(Finding::problem).thenComparing(Finding::rule);

    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }

    /** The one line that a person reads: {@code file:line: what; how to mend it}. */
    @Override
    public String toString() {
        return problem.toString();
    }
}
