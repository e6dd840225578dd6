package hutchleaf.proof;

import hutchleaf.problem.Problem;
import java.util.List;

/** All that a run of the proofreader says. */
public record Report(List<Finding> findings, Coverage coverage, List<Reading> readings) {
    public Report {
        findings = List.copyOf(findings);
        readings = List.copyOf(readings);
    }

    public boolean hasErrors() {
        return errors() > 0;
    }

    public int errors() {
        return (int) findings.stream()
                .filter(finding -> finding.problem().severity() == Problem.Severity.ERROR)
                .count();
    }

    public int warnings() {
        return findings.size() - errors();
    }
}
