package hutchleaf.problem;

import hutchleaf.problem.Problem.Severity;
import java.util.ArrayList;
import java.util.List;

/** Gathers problems while work goes on, so that an author sees all of them at once. Not safe between threads. */
public final class Problems {
    private final List<Problem> found = new ArrayList<>();

    /** Notes an error: the run will write nothing. */
    public void add(Place place, String what, String mend) {
        found.add(new Problem(place, Severity.ERROR, what, mend));
    }

    /** Notes something an author should look at, which stops nothing. */
    public void warn(Place place, String what, String mend) {
        found.add(new Problem(place, Severity.WARNING, what, mend));
    }

    public void addAll(Problems others) {
        found.addAll(others.found);
    }

    public void addAll(List<Problem> others) {
        found.addAll(others);
    }

    public boolean hasErrors() {
        return found.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** All of them without doubles, sorted by file and line. */
    public List<Problem> sorted() {
        return found.stream().sorted().distinct().toList();
    }
}
