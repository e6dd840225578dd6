package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.press.PdfGlyphs.Run;
import hutchleaf.sheet.CardMaking.Axis;
import hutchleaf.sheet.Correction;
import hutchleaf.sheet.Length;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Corrected files, read back and put through a simulated printer with the faults they were corrected for. */
final class CorrectedTest {
    private static final double SAME = 0.02;
    private static final int PAGES = 4;
    private static final int WORDS = 6;

    /** Where a word belongs on its page: mm. */
    private record Spot(double x, double y) {}

    private static Printed sheets(Paper paper, List<Spot> spots) {
        double width = paper.height().mm();
        double height = paper.width().mm();
        StringBuilder body = new StringBuilder();
        for (int page = 0; page < PAGES; page++) {
            body.append("<div class='s'>");
            for (int word = 0; word < WORDS; word++) {
                Spot spot = spots.get(page * WORDS + word);
                body.append(String.format(
                        Locale.ROOT,
                        "<p style='left:%.3fmm;top:%.3fmm'>w%d</p>",
                        spot.x(),
                        spot.y(),
                        page * WORDS + word));
            }
            body.append("</div>");
        }
        String style = String.format(
                Locale.ROOT,
                "@page { size: %1$.3fmm %2$.3fmm; margin: 0 } p { position: absolute; line-height: 1 }"
                        + " .s { position: relative; width: %1$.3fmm; height: %3$.3fmm } .s + .s { page-break-before: always }",
                width,
                height,
                height - 0.4);
        return Proofs.print(Proofs.page(style, body.toString()));
    }

    private static List<Spot> spots(Paper paper, Random random) {
        List<Spot> spots = new ArrayList<>();
        for (int word = 0; word < PAGES * WORDS; word++) {
            spots.add(new Spot(
                    20 + random.nextDouble() * (paper.height().mm() - 50),
                    20 + random.nextDouble() * (paper.width().mm() - 45)));
        }
        return spots;
    }

    @ParameterizedTest
    @CsvSource({
        "LETTER, UPRIGHT, 1",
        "LETTER, LEVEL, 2",
        "A4, UPRIGHT, 3",
        "A4, LEVEL, 4",
        "LETTER, , 5",
        "A4, , 6",
        "LETTER, LEVEL, 7",
        "A4, UPRIGHT, 8"
    })
    void everyWordOfTheFileIsPrintedWhereItBelongs(Paper paper, Axis turnedOn, long seed) {
        Random random = new Random(seed);
        Printed before = sheets(paper, spots(paper, random));
        double scaleX = 95 + random.nextInt(101) / 10.0;
        double scaleY = 95 + random.nextInt(101) / 10.0;
        double offsetX = (random.nextInt(41) - 20) / 4.0;
        double offsetY = (random.nextInt(41) - 20) / 4.0;
        Correction correction = new Correction(scaleX, scaleY, Length.mm(offsetX), Length.mm(offsetY));
        Printed after = Corrected.of(before, correction, Optional.ofNullable(turnedOn));
        List<Run> should = PdfGlyphs.of(Proofs.bytes(before));
        List<Run> drawn = PdfGlyphs.of(Proofs.bytes(after));
        assertThat(drawn).hasSameSizeAs(should);
        double width = paper.height().mm();
        double height = paper.width().mm();
        for (int i = 0; i < should.size(); i++) {
            Run is = drawn.get(i);
            assertThat(is.text()).isEqualTo(should.get(i).text());
            // The printer scales about the middle of the page; a back, turned over, lies beside its front.
            double x = width / 2 + scaleX / 100 * (is.x() - width / 2);
            double y = height / 2 + scaleY / 100 * (is.y() - height / 2);
            boolean back = turnedOn != null && is.page() % 2 == 0;
            if (back && turnedOn == Axis.UPRIGHT) {
                x = width - ((width - x) + offsetX);
                y += offsetY;
            } else if (back) {
                x += offsetX;
                y = height - ((height - y) + offsetY);
            }
            assertThat(x).as(is + ", seed " + seed).isCloseTo(should.get(i).x(), within(SAME));
            assertThat(y).as(is + ", seed " + seed).isCloseTo(should.get(i).y(), within(SAME));
        }
    }

    @Test
    void theTagsStayAndTheFileIsStillPdfUa() {
        Printed before = sheets(Paper.A4, spots(Paper.A4, new Random(9)));
        Correction correction = new Correction(99, 101, Length.mm(1), Length.mm(-1));
        byte[] after = Proofs.bytes(Corrected.of(before, correction, Optional.of(Axis.LEVEL)));
        assertThat(PdfUa.violations(after)).isEmpty();
        assertThat(PdfTags.of(after)).isEqualTo(PdfTags.of(Proofs.bytes(before)));
    }

    @Test
    void theSamePagesGiveTheSameBytesAndOtherNumbersAnotherFile() {
        Printed before = sheets(Paper.A4, spots(Paper.A4, new Random(10)));
        Correction one = new Correction(99, 101, Length.mm(1), Length.mm(-1));
        Correction other = new Correction(99, 101, Length.mm(1), Length.mm(1));
        byte[] once = Proofs.bytes(Corrected.of(before, one, Optional.of(Axis.LEVEL)));
        assertThat(Proofs.bytes(Corrected.of(before, one, Optional.of(Axis.LEVEL))))
                .isEqualTo(once);
        assertThat(Proofs.bytes(Corrected.of(before, other, Optional.of(Axis.LEVEL))))
                .isNotEqualTo(once);
    }

    @Test
    void aPrinterWithoutFaultsChangesNothing() {
        Printed before = sheets(Paper.LETTER, spots(Paper.LETTER, new Random(11)));
        assertThat(Corrected.of(before, Correction.NONE, Optional.empty())).isSameAs(before);
    }

    @Test
    void correctedFilesAreBoundLikeAllOthers() {
        Printed before = sheets(Paper.LETTER, spots(Paper.LETTER, new Random(12)));
        Correction correction = new Correction(98, 102, Length.ZERO, Length.ZERO);
        Printed after = Corrected.of(before, correction, Optional.empty());
        byte[] bound = Proofs.bytes(Merge.of("Both", "en", List.of(after, after)));
        assertThat(PdfUa.violations(bound)).isEmpty();
        List<Run> alone = PdfGlyphs.of(Proofs.bytes(after));
        assertThat(PdfGlyphs.of(bound)).hasSize(2 * alone.size()).startsWith(alone.toArray(Run[]::new));
    }

    /** By hand: the trim's left edge at 20 mm of 279.4, 98 percent: 139.7 - 119.7 / 0.98 = 17.557. */
    @Test
    void whatIsLeftOfAPageOnceItIsCutGoesWithItsContent() throws IOException {
        String style = "@page { size: 279.4mm 215.9mm; margin: 0 } ";
        Printed before = Proofs.print(Proofs.page(style, "<div data-trim='20 30 200 150'><p>trim</p></div>"));
        Printed after = Corrected.of(before, new Correction(98, 100, Length.ZERO, Length.ZERO), Optional.empty());
        try (PDDocument pdf = Loader.loadPDF(Proofs.bytes(after))) {
            PDRectangle trim = pdf.getPage(0).getTrimBox();
            assertThat(new Length(trim.getLowerLeftX()).mm()).isCloseTo(17.557, within(SAME));
            assertThat(new Length(trim.getWidth()).mm()).isCloseTo(200 / 0.98, within(SAME));
            assertThat(new Length(trim.getUpperRightY()).mm()).isCloseTo(215.9 - 30, within(SAME));
        }
    }

    /** A shading has a space of its own (ISO 32000-1, 8.7.4.3), which must move with the page. */
    @Test
    void aShadedFigureMovesWithItsPage() {
        String style = "@page { size: 279.4mm 215.9mm; margin: 0 } div { position: absolute; left: 40mm; top: 40mm } ";
        String shaded =
                "<div><svg xmlns='http://www.w3.org/2000/svg' aria-hidden='true' viewBox='0 0 100 50' width='100mm'"
                        + " height='50mm'><defs><linearGradient id='g'><stop offset='0' stop-color='black'/><stop offset='0.5'"
                        + " stop-color='black'/><stop offset='0.5' stop-color='white'/></linearGradient></defs>"
                        + "<rect x='0' y='0' width='100' height='50' fill='url(#g)'/></svg></div><p>x</p>";
        Printed before = Proofs.print(Proofs.page(style, shaded));
        assertThat(PdfRaster.of(Proofs.bytes(before), 1).ink(41, 41, 89, 89)).isGreaterThan(0.99);
        assertThat(PdfRaster.of(Proofs.bytes(before), 1).ink(91, 41, 139, 89)).isLessThan(0.01);
        Correction correction = new Correction(95, 95, Length.ZERO, Length.ZERO);
        PdfRaster after = PdfRaster.of(Proofs.bytes(Corrected.of(before, correction, Optional.empty())), 1);
        // By hand: 139.7 - 99.7 / 0.95 = 34.75, the middle of the figure 139.7 - 49.7 / 0.95 = 87.38, top 36.42.
        assertThat(after.ink(35.5, 37.5, 86.7, 88)).isGreaterThan(0.99);
        assertThat(after.ink(88.1, 37.5, 139, 88)).isLessThan(0.01);
    }

    @ParameterizedTest
    @CsvSource({"8, 0, false", "8, 3, true", "8, -3, false", "200, 3, false"})
    void inkNearTheEdgeIsFound(double y, double down, boolean near) {
        String style =
                "@page { size: 279.4mm 215.9mm; margin: 0 } div { position: absolute; left: 50mm; width: 60mm; top: "
                        + y + "mm; height: 4mm; border: 1pt solid black } ";
        Printed before = Proofs.print(Proofs.page(style, "<div><p>x</p></div>"));
        Printed both = Merge.of("Both", "en", List.of(before, before));
        // The second page is a back: moved against an offset of so much, down as its front is seen.
        Printed after =
                Corrected.of(both, new Correction(100, 100, Length.ZERO, Length.mm(down)), Optional.of(Axis.UPRIGHT));
        assertThat(Corrected.nearTheEdge(after, Correction.EDGE))
                .isEqualTo(near ? OptionalInt.of(2) : OptionalInt.empty());
    }
}
