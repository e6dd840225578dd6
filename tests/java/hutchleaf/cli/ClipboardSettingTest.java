package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A judge's clipboard in large print, from the outside. */
final class ClipboardSettingTest {
    /** Large print is 18 pt on everything (American Printing House, Kitchel); PDFs keep sizes to a few hundredths. */
    private static final double LARGE = 17.95;

    @TempDir
    private Path out;

    @ParameterizedTest
    @ValueSource(strings = {"junior", "primary"})
    void everythingOnALargePrintClipboardIsSetIn18PointOrMore(String division) throws IOException {
        Run run = Run.of("scoresheets", "--division", division, "--large-print", "--out", out.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        byte[] pdf = Files.readAllBytes(out.resolve("judge/judge-1-" + division + ".pdf"));
        List<Word> words = PdfWords.of(pdf);
        assertThat(words)
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThan(LARGE));
        assertThat(words.stream().map(Word::text).collect(Collectors.joining(" ")))
                .contains("Check-in", "Order of showing");
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }
}
