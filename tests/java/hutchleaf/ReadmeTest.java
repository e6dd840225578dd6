package hutchleaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What the README tells a newcomer to type is what the check of every change runs. */
final class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final Set<String> COMMANDS = Set.of("mvn -q compile exec:java", "mvn verify");

    /** Options that only change how much Maven says. */
    private static final Set<String> QUIET = Set.of("-q", "-B", "-ntp");

    @Test
    void theReadmesTwoCommandsStandInItAsCodeLines() throws IOException {
        assumeThat(README).exists();
        assertThat(codeLines(Files.readAllLines(README))).containsAll(COMMANDS);
    }

    @Test
    void theCheckRunsTheSameCommands() throws IOException {
        List<Set<String>> run = Files.readAllLines(Path.of(".ci/run")).stream()
                .filter(line -> line.startsWith("mvn "))
                .map(ReadmeTest::spoken)
                .toList();
        assertThat(run).containsAll(COMMANDS.stream().map(ReadmeTest::spoken).toList());
    }

    /** The words of a command that change what it does. */
    private static Set<String> spoken(String command) {
        Set<String> words = new TreeSet<>(List.of(command.strip().split(" +")));
        words.removeAll(QUIET);
        return words;
    }

    /** Lines of code blocks, fenced or indented by four, as CommonMark 0.31.2 (4.4, 4.5) has them. */
    private static List<String> codeLines(List<String> lines) {
        List<String> code = new ArrayList<>();
        boolean fenced = false;
        for (String line : lines) {
            if (line.startsWith("```")) {
                fenced = !fenced;
            } else if (fenced || line.startsWith("    ")) {
                code.add(line.strip());
            }
        }
        return code;
    }
}
