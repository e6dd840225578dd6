package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.edition.Stop;
import hutchleaf.model.Level;
import hutchleaf.model.Station.SideUp;
import hutchleaf.press.Imposition;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Printed;
import hutchleaf.sheet.Booklet;
import hutchleaf.sheet.Booklet.Binding;
import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.Paper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lean guides of the project's own tree, read back from the finished PDFs. */
final class LeanGuideTest {
    /** Common practice, no source; an inkjet's own table leaves 6.7 mm blank at the foot (OfficeJet 7210 specifications). */
    private static final double EDGE = 7;

    private static final int DOTS_AN_INCH = 72;

    @ParameterizedTest
    @CsvSource({"PRIMARY, LETTER", "JUNIOR, A4", "INTERMEDIATE, LETTER", "SENIOR, A4"})
    void everyStopHasOnePageOrTwoThatFaceEachOther(Level level, Paper paper) {
        Map<String, Integer> pageOf = RealTree.leanGuide(level, paper).pageOf();
        int next = page(pageOf, RealTree.edition(level).stops().get(0));
        assertThat(next % 2).as("the first stop stands at the left").isZero();
        for (Stop stop : RealTree.edition(level).stops()) {
            assertThat(page(pageOf, stop)).as(stop.station().name()).isEqualTo(next);
            Integer second = pageOf.get(stop.leaf().head().anchor() + "-say");
            if (second != null) {
                assertThat(next % 2)
                        .as("%s starts at the left", stop.station().name())
                        .isZero();
                assertThat(second).isEqualTo(next + 1);
            }
            next += second == null ? 1 : 2;
        }
        assertThat(pageOf).containsEntry("words", next);
    }

    private static int page(Map<String, Integer> pageOf, Stop stop) {
        return pageOf.getOrDefault(stop.leaf().head().anchor(), 0);
    }

    /** Sizes: design rule of the pages, the same as in the study guide. */
    @ParameterizedTest
    @CsvSource({"PRIMARY, LETTER, 16", "JUNIOR, A4, 13", "INTERMEDIATE, LETTER, 11.5", "SENIOR, A4, 10.5"})
    void bodyTypeHasTheSizeOfItsLevelAndNothingIsSmallerThanANote(Level level, Paper paper, double body) {
        List<Word> words = PdfWords.of(RealTree.bytes(RealTree.leanGuide(level, paper)));
        double commonest =
                words.stream().collect(Collectors.groupingBy(Word::size, Collectors.counting())).entrySet().stream()
                        .max(Map.Entry.comparingByValue())
                        .orElseThrow()
                        .getKey();
        assertThat(commonest).isBetween(body - 0.05, body + 0.05);
        assertThat(words)
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThan(9.45));
    }

    @ParameterizedTest
    @CsvSource({"JUNIOR, A4", "INTERMEDIATE, LETTER", "SENIOR, A4"})
    void whileTheRabbitIsOnItsBackEveryPageHasTheStopRule(Level level, Paper paper) {
        Printed guide = RealTree.leanGuide(level, paper);
        List<Stop> stops = RealTree.edition(level).stops();
        int first = page(guide.pageOf(), stop(stops, 5));
        int after = page(guide.pageOf(), stop(stops, 14));
        assertThat(stops.stream().filter(stop -> stop.station().sideUp() == SideUp.BACK))
                .hasSize(9);
        for (int page = first; page < after; page++) {
            assertThat(PdfWords.text(RealTree.bytes(guide), page).replaceAll("\\s+", " "))
                    .as("page %d", page)
                    .contains("kicks, pants or shakes")
                    .containsAnyOf("urn it back, pose it");
        }
    }

    private static Stop stop(List<Stop> stops, int no) {
        return stops.stream()
                .filter(stop -> stop.station().no() == no)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"PRIMARY, LETTER", "JUNIOR, A4", "SENIOR, A4"})
    void pagesAndSheetsArePdfUa(Level level, Paper paper) {
        Printed guide = RealTree.leanGuide(level, paper);
        assertThat(PdfUa.violations(RealTree.bytes(guide))).as("pages").isEmpty();
        assertThat(PdfUa.violations(RealTree.bytes(sheets(guide, paper))))
                .as("sheets")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"PRIMARY, LETTER", "JUNIOR, A4", "INTERMEDIATE, LETTER"})
    void noInkStandsInTheLastSevenMillimetresOfASheet(Level level, Paper paper) throws IOException {
        Printed sheets = sheets(RealTree.leanGuide(level, paper), paper);
        try (PDDocument pdf = Loader.loadPDF(RealTree.bytes(sheets))) {
            PDFRenderer renderer = new PDFRenderer(pdf);
            for (int side = 0; side < pdf.getNumberOfPages(); side++) {
                BufferedImage image = renderer.renderImageWithDPI(side, DOTS_AN_INCH);
                assertThat(inkAtTheEdge(image))
                        .as("dots of ink at the edge of side %d", side + 1)
                        .isZero();
            }
        }
    }

    private static long inkAtTheEdge(BufferedImage image) {
        int edge = (int) Math.floor(EDGE / 25.4 * DOTS_AN_INCH);
        return IntStream.range(0, image.getWidth() * image.getHeight())
                .filter(dot -> {
                    int x = dot % image.getWidth();
                    int y = dot / image.getWidth();
                    return Math.min(x, image.getWidth() - 1 - x) < edge
                            || Math.min(y, image.getHeight() - 1 - y) < edge;
                })
                .filter(dot -> (image.getRGB(dot % image.getWidth(), dot / image.getWidth()) & 0xff) < 0xf0)
                .count();
    }

    private static Printed sheets(Printed guide, Paper paper) {
        Booklet booklet = Booklet.of(guide.pages(), Binding.NESTED);
        return Imposition.of("Sheets", "en", guide, booklet, paper, new Grammage(80));
    }
}
