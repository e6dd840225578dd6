package hutchleaf.proof;

import hutchleaf.model.Level;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Gathers findings while the rules run. Not safe between threads. */
public final class Findings {
    /** Where a finding names the levels it is for. */
    static final String LEVELS = "{levels}";

    private final List<Finding> found = new ArrayList<>();
    private final Map<Finding, Set<Level>> byLevel = new LinkedHashMap<>();

    void error(Rule rule, Place at, String what, String mend) {
        found.add(new Finding(rule, new Problem(at, Problem.Severity.ERROR, what, mend)));
    }

    /** An error at one level; what is the same at other levels becomes one finding that names them all. */
    void error(Rule rule, Place at, Level level, String what, String mend) {
        byLevel.computeIfAbsent(
                        new Finding(rule, new Problem(at, Problem.Severity.ERROR, what, mend)),
                        finding -> EnumSet.noneOf(Level.class))
                .add(level);
    }

    void warn(Rule rule, Place at, String what, String mend) {
        found.add(new Finding(rule, new Problem(at, Problem.Severity.WARNING, what, mend)));
    }

    /** Takes in what an earlier or later stage reported, under one rule. */
    public void take(Rule rule, Problems problems) {
        problems.sorted().forEach(problem -> found.add(new Finding(rule, problem)));
    }

    /** All of them without doubles, sorted by file and line. */
    public List<Finding> sorted() {
        Stream<Finding> merged = byLevel.entrySet().stream().map(entry -> named(entry.getKey(), entry.getValue()));
        return Stream.concat(found.stream(), merged).sorted().distinct().toList();
    }

    private static Finding named(Finding finding, Set<Level> levels) {
        List<String> words = levels.stream().map(Level::word).toList();
        String last = words.get(words.size() - 1);
        String all = words.size() == 1 ? last : String.join(", ", words.subList(0, words.size() - 1)) + " and " + last;
        Problem problem = finding.problem();
        return new Finding(
                finding.rule(),
                new Problem(problem.place(), problem.severity(), problem.what().replace(LEVELS, all), problem.mend()));
    }
}
