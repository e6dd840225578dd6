package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

final class InkMeterTest {
    /** Letter, in square millimetres. */
    private static final double PAGE = 215.9 * 279.4;

    private static final String WORDS =
            "The quick brown fox jumps over a lazy dog, 1234567890; “Waffles”, fi ff ffi. ".repeat(18);

    private final InkMeter meter = new InkMeter();

    private List<Double> ink(String style, String body) {
        return meter.of(Proofs.print(Proofs.page(style, body)));
    }

    /** The same page drawn whole, letters too, with 300 dots an inch. */
    private static double drawn(Printed printed) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Proofs.bytes(printed))) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, 300, ImageType.GRAY);
            double ink = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    ink += 1 - image.getRaster().getSample(x, y, 0) / 255.0;
                }
            }
            return ink / image.getWidth() / image.getHeight();
        }
    }

    @Test
    void aBlackSquareIsItsShareOfThePage() {
        List<Double> ink = ink(
                ".a { width: 100mm; height: 50mm; background: black } .b { page-break-before: always }",
                "<div class=\"a\">&#160;</div><p class=\"b\">&#160;</p>");
        assertThat(ink).hasSize(2);
        assertThat(ink.get(0)).isCloseTo(100 * 50 / PAGE, within(0.0005));
        assertThat(ink.get(1)).isZero();
    }

    @Test
    void whatIsWhiteOnBlackTakesNoInk() {
        assertThat(ink(
                        ".a { width: 100mm; height: 50mm; background: black; padding: 5mm; box-sizing: border-box }"
                                + " .b { width: 40mm; height: 20mm; background: white }",
                        "<div class=\"a\"><div class=\"b\">&#160;</div></div>"))
                .singleElement()
                .satisfies(ink -> assertThat(ink).isCloseTo((100 * 50 - 40 * 20) / PAGE, within(0.0005)));
    }

    @Test
    void lettersTakeWhatTheyTakeWhenTheyAreDrawn() throws IOException {
        Printed page = Proofs.print(Proofs.page(
                "", "<p>" + WORDS + "</p><p><strong>" + WORDS + "</strong></p><p><em>" + WORDS + "</em> ☐ ≥ →</p>"));
        double drawn = drawn(page);
        assertThat(drawn).isGreaterThan(0.04);
        assertThat(meter.of(page).get(0)).isCloseTo(drawn, within(0.02 * drawn));
    }

    @Test
    void whiteLettersOnBlackSpareItsInk() throws IOException {
        Printed page = Proofs.print(Proofs.page("p { background: black; color: white }", "<p>" + WORDS + "</p>"));
        double drawn = drawn(page);
        assertThat(meter.of(page).get(0)).isCloseTo(drawn, within(0.02 * drawn));
    }

    @Test
    void aBoundFileHasTheInkOfItsParts() {
        Printed light = Proofs.print(Proofs.page("", "<p>little</p>"));
        Printed dark = Proofs.print(Proofs.page("p { background: black }", "<p>much</p>"));
        Printed bound = Merge.of("Both", "en", List.of(light, dark));
        assertThat(meter.of(bound))
                .containsExactly(meter.of(light).get(0), meter.of(dark).get(0));
        // Read from its own bytes it is the same.
        Printed read = new Printed(Proofs.bytes(bound), 2, java.util.Map.of());
        assertThat(meter.of(read).get(1)).isCloseTo(meter.of(dark).get(0), within(1e-6));
        assertThat(meter.of(read).get(0)).isCloseTo(meter.of(light).get(0), within(1e-6));
    }
}
