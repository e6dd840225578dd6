package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code hutchleaf booklet} from the outside. */
final class BookletTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"short-edge, turned over the short edge", "one, the print outside"})
    void aLevelGetsAFileToReadAndOneToFoldAndIsToldHow(String sides, String how) throws IOException {
        Run run = Run.of("booklet", "--level", "primary", "--sides", sides, "--out", folder.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(Trees.bytes(folder).keySet())
                .containsExactlyInAnyOrder(
                        ".made-by-booklet",
                        "booklets/lean-guide-primary.pdf",
                        "booklets/lean-guide-primary-sheets.pdf");
        assertThat(run.out()).contains("file", "in all", "How to fold", how);
    }

    @Test
    void aWeightThatNoPaperHasIsRefusedInOneLine() {
        Run run = Run.of("booklet", "--weight", "8", "--out", folder.toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines())
                .containsExactly("--weight 8.0: no paper to fold weighs that; write 50 to 200, office paper has 80");
    }

    @Test
    void aWrongWordForTheSidesIsAnsweredWithTheRightOnes() {
        Run run = Run.of("booklet", "--sides", "long-edge", "--out", folder.toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.err()).contains("short-edge").contains("one");
    }
}
