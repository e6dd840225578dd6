package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where things land, in millimetres, read back from the finished file. */
class PlacingTest {
    /** What must meet across a fold or a cut may differ by this much, in mm. */
    private static final double TOLERANCE = 0.05;

    private static final int DOTS_PER_INCH = 600;

    /** A pixel at that resolution, in mm, on top of the tolerance. */
    private static final double SEEN = TOLERANCE + 25.4 / DOTS_PER_INCH;

    private static final String SHEET =
            "@page { margin: 0 } .sheet { position: relative; width: 215mm; height: 279mm } "
                    + ".sheet > * { position: absolute } ";

    @Test
    void textStandsWhereTheStylePutsIt() {
        byte[] pdf = Proofs.pdf(Proofs.page(SHEET, """
                <div class="sheet">
                <div style="left: 12mm; top: 20mm">alpha</div>
                <div style="left: 120.75mm; top: 20mm">beta</div>
                <div style="left: 12mm; top: 203.2mm">gamma</div>
                </div>
                """));
        PdfWords.Word alpha = PdfWords.of(pdf, "alpha").get(0);
        PdfWords.Word beta = PdfWords.of(pdf, "beta").get(0);
        PdfWords.Word gamma = PdfWords.of(pdf, "gamma").get(0);
        assertThat(alpha.x()).isCloseTo(12, within(TOLERANCE));
        assertThat(beta.x()).isCloseTo(120.75, within(TOLERANCE));
        assertThat(beta.y()).isEqualTo(alpha.y());
        assertThat(gamma.y() - alpha.y()).isCloseTo(203.2 - 20, within(TOLERANCE));
        // Lato rises 1974 of 2000 units, DejaVu Sans falls 483 of 2048 (their hhea tables); half of what is left of the
        // line of 16 pt stands above.
        double rise = 12 * 1974 / 2000.0;
        double fall = 12 * 483 / 2048.0;
        double baseline = ((16 - rise - fall) / 2 + rise) * 25.4 / 72;
        assertThat(alpha.y()).isCloseTo(20 + baseline, within(TOLERANCE));
    }

    @Test
    void textOfASecondPageStandsInItsPlaceToo() {
        byte[] pdf = Proofs.pdf(Proofs.page(SHEET, """
                <div class="sheet" style="page-break-after: always"><div style="left: 0; top: 0">one</div></div>
                <div class="sheet"><div style="left: 33.3mm; top: 44.4mm; line-height: 0">two</div></div>
                """));
        PdfWords.Word two = PdfWords.of(pdf, "two").get(0);
        assertThat(two.page()).isEqualTo(2);
        assertThat(two.x()).isCloseTo(33.3, within(TOLERANCE));
    }

    /** The square of 100 by 50 has its line inside the edge: what is seen is as large as its box. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width: 60mm | 60 | 30",
                "height: 20mm | 40 | 20",
                "width: 60mm; max-height: 20mm | 40 | 20",
                "max-width: 10mm; max-height: 30mm | 10 | 5",
                "width: 5mm; max-width: 100% | 5 | 2.5",
                "width: 33.7mm | 33.7 | 16.85",
                "width: 30mm; height: 30mm | 30 | 15"
            })
    void aFigureKeepsItsProportionsInTheSizeOfTheStyle(String size, double width, double height) throws IOException {
        String body = "<div class=\"sheet\"><img style=\"left: 25mm; top: 31mm; %s\" alt=\"a square\""
                + " src=\"hutch:figures/square.svg\"/></div>";
        double[] seen = ink(Proofs.pdf(Proofs.page(SHEET, String.format(body, size))));
        boolean centred = size.contains("height: 30mm") && size.startsWith("width");
        assertThat(seen[0]).as("left").isCloseTo(25, within(SEEN));
        assertThat(seen[1]).as("top").isCloseTo(31 + (centred ? 7.5 : 0), within(SEEN));
        assertThat(seen[2]).as("width").isCloseTo(width, within(2 * SEEN));
        assertThat(seen[3]).as("height").isCloseTo(height, within(2 * SEEN));
    }

    @Test
    void anInlineDrawingIsSizedByItsAttributesOrItsStyle() throws IOException {
        for (String size : List.of("width=\"24mm\" height=\"12mm\"", "style=\"width: 24mm\"", "width=\"24mm\"")) {
            String drawing = Proofs.SQUARE.replace("<svg", "<svg " + size);
            String body = "<div class=\"sheet\"><div style=\"left: 25mm; top: 31mm\">" + drawing + "</div></div>";
            double[] seen = ink(Proofs.pdf(Proofs.page(SHEET, body)));
            assertThat(seen[2]).as("width with " + size).isCloseTo(24, within(2 * SEEN));
            assertThat(seen[3]).as("height with " + size).isCloseTo(12, within(2 * SEEN));
        }
    }

    /** Left, top, width and height in mm of what is dark on the first page. */
    private static double[] ink(byte[] file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, DOTS_PER_INCH);
            int left = image.getWidth();
            int top = image.getHeight();
            int right = 0;
            int bottom = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    if ((image.getRGB(x, y) & 0xFF) < 128) {
                        left = Math.min(left, x);
                        right = Math.max(right, x + 1);
                        top = Math.min(top, y);
                        bottom = Math.max(bottom, y + 1);
                    }
                }
            }
            double mm = 25.4 / DOTS_PER_INCH;
            return new double[] {left * mm, top * mm, (right - left) * mm, (bottom - top) * mm};
        }
    }
}
