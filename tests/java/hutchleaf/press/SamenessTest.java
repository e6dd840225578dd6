package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.page.Manuscript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SamenessTest {
    @Test
    void theSamePageGivesTheSameBytesFromAUsedPressAndANewOne() throws IOException {
        byte[] first = PdfUaTest.whole();
        assertThat(PdfUaTest.whole()).as("printed again").isEqualTo(first);
        assertThat(printAnew(Path.of("tests/resources/press/whole.xhtml"))).isEqualTo(first);
    }

    /** A process of its own: Turkish has another small i, Kathmandu is 5:45 ahead, and hash seeds differ. */
    @Test
    void theSamePageGivesTheSameBytesInAnotherCountryAndFolder(@TempDir Path folder)
            throws IOException, InterruptedException {
        Path page = Path.of("tests/resources/press/whole.xhtml").toAbsolutePath();
        Path target = folder.resolve("there.pdf");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.language=tr",
                        "-Duser.country=TR",
                        "-Duser.timezone=Asia/Kathmandu",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        SamenessTest.class.getName(),
                        page.toString(),
                        target.toString())
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(Files.readAllBytes(target)).isEqualTo(PdfUaTest.whole());
    }

    /** Prints the page named first into the file named second. */
    public static void main(String[] arguments) throws IOException {
        Files.write(Path.of(arguments[1]), printAnew(Path.of(arguments[0])));
    }

    private static byte[] printAnew(Path page) throws IOException {
        Press press = new Press(path -> Optional.of(Proofs.SQUARE.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        Manuscript manuscript = Proofs.manuscript(Files.readString(page));
        return Proofs.bytes(
                press.print(manuscript, new hutchleaf.problem.Problems()).orElseThrow());
    }
}
