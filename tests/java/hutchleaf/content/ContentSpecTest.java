package hutchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hutchleaf.model.Library;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The form of the content tree, rule by rule, as the documents in {@code tests/spec} tell it. */
class ContentSpecTest {
    private static final Path BASE = Path.of("tests/resources/base-tree");
    private static final Path SPEC = Path.of("tests/spec");

    @TempDir
    Path temp = Path.of("");

    @TestFactory
    Stream<DynamicTest> everyExampleOfTheSpecTables() throws IOException {
        List<SpecExample> examples = SpecExample.readAll(SPEC);
        assertThat(examples).as("examples in " + SPEC).hasSizeGreaterThan(100);
        return examples.stream().map(example -> DynamicTest.dynamicTest(example.name(), () -> check(example)));
    }

    private void check(SpecExample example) throws IOException {
        Path root = temp.resolve(Integer.toString(example.name().hashCode()));
        example.layOver(BASE, root);
        Problems problems = new Problems();
        Optional<Library> library = LibraryReader.read(new ContentTree(root, "content"), problems);
        List<String> said = problems.sorted().stream().map(Problem::toString).toList();
        if (example.wants().equals("error")) {
            assertThat(said).as("problems of " + example.name()).containsExactlyElementsOf(example.lines());
            assertThat(library).as("a library in spite of errors").isEmpty();
        } else {
            assertThat(said).as("problems of " + example.name()).isEmpty();
            List<String> dump = example.overlays().stream()
                    .flatMap(overlay -> ModelDump.of(library.orElseThrow(), overlay.path()).stream())
                    .toList();
            assertThat(dump).as("model of " + example.name()).containsExactlyElementsOf(example.lines());
        }
    }

    @Test
    void theBaseTreeReadsWithoutAProblem() {
        Problems problems = new Problems();
        assertThat(LibraryReader.read(new ContentTree(BASE, "content"), problems))
                .as("library; problems: %s", problems.sorted())
                .isPresent();
    }

    @Test
    void aFileBlockWithoutAnExpectationIsRefused() {
        assertThatThrownBy(() -> SpecExample.read("x.md", "## One\n```file path=a.md\n```\n## Two\n"))
                .hasMessage("x.md: under 'One' a file stands without an expectation");
    }

    @Test
    void anExpectationWithoutAFileBlockIsRefused() {
        assertThatThrownBy(() -> SpecExample.read("x.md", "## One\n```error\n```\n"))
                .hasMessage("x.md: under 'One' an expectation stands without a file");
    }

    @Test
    void aBlockOfUnknownKindIsRefused() {
        assertThatThrownBy(() -> SpecExample.read("x.md", "## One\n```eror\n```\n"))
                .hasMessage("x.md: under 'One' a block of unknown kind 'eror'");
    }
}
