package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FittingTest {
    /** Lines of 8, 6 and 4 mm: with each class a text of N lines is N times as high. */
    private static final String STYLE = ".big { font-size: 20pt; line-height: 8mm } "
            + ".middle { font-size: 15pt; line-height: 6mm } .small { font-size: 10pt; line-height: 4mm } ";

    private static String face(int line, int lines, String limit) {
        return "<div data-fit=\"big middle small\" data-fit-height=\"" + limit + "\" data-place=\"content/ears.md:"
                + line + "\" data-what=\"card 4." + line + " answer\">" + "<div>hop</div>".repeat(lines) + "</div>";
    }

    private static List<Double> sizes(String body) {
        return PdfWords.of(Proofs.pdf(Proofs.page(STYLE, body))).stream()
                .map(PdfWords.Word::size)
                .distinct()
                .toList();
    }

    @Test
    void theLargestClassThatFitsIsTaken() {
        assertThat(sizes(face(1, 3, "24mm"))).as("3 lines of 8 mm in 24 mm").containsExactly(20.0);
        assertThat(sizes(face(1, 3, "23.9mm"))).as("3 lines of 8 mm in 23.9 mm").containsExactly(15.0);
        assertThat(sizes(face(1, 3, "17.9mm"))).as("3 lines of 6 mm in 17.9 mm").containsExactly(10.0);
    }

    /** The tolerance is 0.05 mm; the engine counts in twentieths of a point, so three lines of 8 mm are 24.01 mm high. */
    @Test
    void aDifferenceWithinTheToleranceStillFits() {
        assertThat(sizes(face(1, 3, "23.97mm"))).as("0.04 mm too tall").containsExactly(20.0);
        assertThat(sizes(face(1, 3, "23.94mm"))).as("0.07 mm too tall").containsExactly(15.0);
    }

    private static String limit(double millimetres) {
        return String.format(Locale.ROOT, "%.4fmm", millimetres);
    }

    @Test
    void eachElementIsFittedByItself() {
        assertThat(sizes(face(1, 3, "24mm") + face(2, 3, "18mm") + face(3, 3, "12mm")))
                .containsExactly(20.0, 15.0, 10.0);
    }

    @Test
    void textTooTallForTheSmallestClassIsRefusedWithItsLine() {
        String body = face(14, 3, "24mm") + face(17, 6, "19.7mm") + face(23, 5, "19.7mm");
        assertThat(Proofs.refusals(Proofs.page(STYLE, body)))
                .containsExactly(
                        "content/ears.md:17: card 4.17 answer is 4.3 mm too tall even at its smallest;"
                                + " write it shorter",
                        "content/ears.md:23: card 4.23 answer is 0.3 mm too tall even at its smallest;"
                                + " write it shorter");
    }

    @Test
    void aWordTooLongForItsBoxIsSetSmaller() {
        String word = "<div style=\"width: %s\" data-fit=\"big middle small\">Otorhinolaryngology</div>";
        double middle = widthAt("middle");
        double big = widthAt("big");
        assertThat(big).isGreaterThan(middle + 2);
        assertThat(sizes(word.formatted(limit(big + 1)))).containsExactly(20.0);
        assertThat(sizes(word.formatted(limit(middle + 1)))).containsExactly(15.0);
        assertThat(sizes(word.formatted(limit(middle - 1)))).containsExactly(10.0);
    }

    private static double widthAt(String size) {
        String word = "<div class=\"" + size + "\">Otorhinolaryngology</div>";
        return PdfWords.of(Proofs.pdf(Proofs.page(STYLE, word))).get(0).width();
    }

    @Test
    void aWordTooLongForTheSmallestClassIsRefusedWithItsLine() {
        String word = "<div style=\"width: 20mm\" data-fit=\"big small\" data-place=\"content/ears.md:9\""
                + " data-what=\"the title\">Otorhinolaryngology</div>";
        assertThat(Proofs.refusals(Proofs.page(STYLE, word)))
                .singleElement()
                .asString()
                .matches("content/ears\\.md:9: the title is \\d+\\.\\d mm too wide even at its smallest;"
                        + " break up or shorten its longest word");
    }

    @Test
    void justifiedTextIsNotCalledTooWide() {
        String text = "Look into both ears, from the edge down to the bottom of the cup. ".repeat(8);
        String body = "<p style=\"width: 61.3mm; text-align: justify\" data-fit=\"big middle small\">" + text + "</p>";
        assertThat(sizes(body)).containsExactly(20.0);
    }
}
