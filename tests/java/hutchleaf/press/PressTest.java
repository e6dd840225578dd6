package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PressTest {
    @Test
    void aWholeDocumentIsPdfUa() throws IOException {
        byte[] pdf = Proofs.pdf(Proofs.manuscript(Files.readString(Path.of("tests/resources/press/whole.xhtml"))));
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }
}
