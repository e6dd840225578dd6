package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;

/** Outside truth: veraPDF's profile ua1 (ISO 14289-1:2014). */
class PdfUaTest {
    @Test
    void aDocumentOfEveryKindOfPartIsPdfUa() throws IOException {
        assertThat(PdfUa.violations(whole())).isEmpty();
    }

    @Test
    void aPageOfTextOverDecorationIsPdfUa() {
        byte[] pdf = Proofs.pdf(Proofs.page("svg { position: absolute; left: 0; top: 0; width: 50mm }", """
                <h1>Fold here</h1>
                <div style="position:relative"><svg viewBox="0 0 50 1"><path d="M0 0.5H50" stroke="black"/></svg></div>
                <p>Cut <svg viewBox="0 0 50 1" role="presentation"><path d="M0 0.5H50" stroke="black"/></svg></p>
                """));
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }

    // veraPDF profile ua1, measured: these four rules and no others.
    @Test
    void aBareDocumentBreaksFourRules() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.save(out);
        }
        List<String> rules = PdfUa.violations(out.toByteArray()).stream()
                .map(line -> line.substring(0, line.indexOf(' ')))
                .toList();
        assertThat(rules).containsExactly("6.2-1", "7.1-10", "7.1-11", "7.1-8");
    }

    static byte[] whole() throws IOException {
        return Proofs.pdf(Proofs.manuscript(Files.readString(Path.of("tests/resources/press/whole.xhtml"))));
    }
}
