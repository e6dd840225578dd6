package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class GlyphTest {
    @Test
    void signsThatLatoLacksPrintFromDejaVuSans() {
        for (String family : List.of("Lato, 'DejaVu Sans'", "Lato", "Nowhere")) {
            byte[] pdf = Proofs.pdf(Proofs.page("p { font-family: " + family + " }", "<p>☐ ☑ ✂ ✓ café</p>"));
            assertThat(PdfWords.text(pdf, 1)).as(family).isEqualTo("☐ ☑ ✂ ✓ café\n");
        }
    }

    @Test
    void lettersOfManyTonguesPrint() {
        String text = "Łódź Győr Čeština Tiếng Việt ʻōlelo Ελληνικά кролик naïve œuvre ½ 3 × 4 – “so”";
        assertThat(PdfWords.text(Proofs.pdf(Proofs.page("", "<p>" + text + "</p>")), 1))
                .isEqualTo(text + "\n");
    }

    @Test
    void anotherScriptIsRefusedByNameWithItsLine() {
        String body = "<div data-place=\"content/words.md:4\"><p>a</p><p data-place=\"content/words.md:9\">a <b>兔</b>"
                + "</p></div><p data-place=\"content/words.md:12\">أرنب ארנב</p>";
        assertThat(Proofs.refusals(Proofs.page("", body)))
                .contains("content/words.md:9: the character '兔' (U+5154, Han) cannot be printed;"
                        + " name a TrueType font that has it with --font, or write it in Latin letters")
                .contains("content/words.md:12: the character 'ب' (U+0628, Arabic) cannot be printed;"
                        + " write it in Latin letters")
                .contains("content/words.md:12: the character 'א' (U+05D0, Hebrew) cannot be printed;"
                        + " write it in Latin letters");
    }

    @Test
    void aPictureSignIsRefusedWithItsLine() {
        String body = "<p data-place=\"content/words.md:3\">Hop \uD83D\uDC07</p>";
        assertThat(Proofs.refusals(Proofs.page("", body)))
                .containsExactly("content/words.md:3: the character '\uD83D\uDC07' (U+1F407) cannot be printed;"
                        + " write it in other signs");
    }

    @Test
    void aSignInTheStyleIsLookedAtToo() {
        assertThat(Proofs.refusals(Proofs.page("li:before { content: '\uD83D\uDC07' }", "<p>a</p>")))
                .containsExactly("templates/guide.ftlh: the character '\uD83D\uDC07' (U+1F407) cannot be printed;"
                        + " write it in other signs");
    }

    @Test
    void anAccentWrittenApartIsPutTogether() {
        assertThat(PdfWords.text(Proofs.pdf(Proofs.page("", "<p>cafe\u0301</p>")), 1))
                .isEqualTo("café\n");
    }

    @Test
    void ligaturesAreOff() {
        PdfWords.Word fi =
                PdfWords.of(Proofs.pdf(Proofs.page("", "<p>fi f i</p>"))).get(0);
        PdfWords.Word f = PdfWords.of(Proofs.pdf(Proofs.page("", "<p>f</p>"))).get(0);
        PdfWords.Word i = PdfWords.of(Proofs.pdf(Proofs.page("", "<p>i</p>"))).get(0);
        assertThat(fi.width()).isCloseTo(f.width() + i.width(), org.assertj.core.api.Assertions.within(0.001));
    }
}
