package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.content.SpecExample;
import hutchleaf.proof.Finding;
import hutchleaf.proof.Report;
import hutchleaf.proof.Rule;
import hutchleaf.proof.Spelling;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every rule of the proofreader finds the fault planted for it, no other rule does, and the clean twin is clean. */
final class ProofRulesTest {
    private static final Path BASE = Path.of("tests/resources/proof-tree");
    private static final String MENDED = ", mended";

    @TempDir
    private Path folder;

    private static List<SpecExample> examples() throws IOException {
        return SpecExample.readAll(Path.of("tests/proof"));
    }

    /** The rule an example is for, from its heading: {@code card-twin: …} or {@code card-twin, mended: …}. */
    private static String heading(SpecExample example) {
        String heading = example.name().substring(example.name().indexOf(": ") + 2);
        return heading.substring(0, heading.indexOf(':'));
    }

    @Test
    void theTreeWithoutAFaultIsClean() throws IOException {
        Path tree = folder.resolve("content");
        Trees.copy(BASE, tree);
        assertThat(proof(tree).findings()).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> eachFaultIsFoundByItsRuleAndItsTwinIsClean() throws IOException {
        return examples().stream().map(example -> DynamicTest.dynamicTest(example.name(), () -> check(example)));
    }

    private void check(SpecExample example) throws IOException {
        Path tree = Files.createDirectories(
                        folder.resolve(Integer.toHexString(example.name().hashCode())))
                .resolve("content");
        example.layOver(BASE, tree);
        List<Finding> findings = proof(tree).findings();
        assertThat(findings.stream().map(Finding::toString).collect(Collectors.joining("\n")))
                .isEqualTo(String.join("\n", example.lines()));
        if (heading(example).endsWith(MENDED)) {
            assertThat(findings).isEmpty();
        } else {
            assertThat(findings)
                    .isNotEmpty()
                    .extracting(finding -> finding.rule().key())
                    .containsOnly(heading(example));
        }
    }

    @Test
    void everyRuleHasAPlantedFaultAndACleanTwin() throws IOException {
        Set<String> headings = new TreeSet<>();
        examples().forEach(example -> headings.add(heading(example)));
        List<String> wanted = new ArrayList<>();
        Arrays.stream(Rule.values()).map(Rule::key).forEach(key -> wanted.addAll(List.of(key, key + MENDED)));
        assertThat(headings).containsExactlyInAnyOrderElementsOf(wanted);
    }

    private static Report proof(Path tree) {
        List<Report> reports = new ArrayList<>();
        new ProofRun(
                        new ProofRun.Request(
                                Optional.of(tree),
                                Optional.empty(),
                                ProofRun.Lists.NONE,
                                Spelling.UK,
                                PageChecks.InkMeasured.YES),
                        (report, out) -> reports.add(report))
                .run(new PrintWriter(new StringWriter()));
        return reports.get(0);
    }
}
