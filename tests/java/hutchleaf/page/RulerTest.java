package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import hutchleaf.page.PdfInk.Shape;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.RulerSheet;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The ruler sheet, measured in the finished PDF. */
final class RulerTest {
    private static final double SAME = 0.05;

    /** One international inch: 25.4 mm exactly (US Federal Register 59-5442, 1959; from memory). */
    private static final double INCH = 25.4;

    private static final Map<Paper, byte[]> PRINTED = new ConcurrentHashMap<>();

    private static byte[] pdf(Paper paper) {
        return PRINTED.computeIfAbsent(paper, key -> {
            Problems problems = new Problems();
            Optional<Printed> printed = RulerPages.of(Templates.folder(Path.of("templates")), key, problems)
                    .flatMap(pages -> new Press(path -> Optional.empty()).print(pages, problems));
            assertThat(problems.sorted()).isEmpty();
            return RealTree.bytes(printed.orElseThrow());
        });
    }

    private static List<Shape> ink(Paper paper, int page) {
        return PdfInk.shapes(pdf(paper), page);
    }

    @ParameterizedTest
    @EnumSource
    void itIsPdfUaAndHasTwoPagesHeldSideways(Paper paper) {
        assertThat(PdfUa.violations(pdf(paper))).isEmpty();
        List<Word> words = PdfWords.of(pdf(paper));
        assertThat(words.stream().mapToInt(Word::page).max()).hasValue(2);
        assertThat(words)
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThan(9.45));
    }

    /** From the middle of one end mark to the middle of the other, as the sheet tells the reader to measure. */
    @ParameterizedTest
    @EnumSource
    void theLongLinesHaveTheirTrueLength(Paper paper) {
        List<Shape> ink = ink(paper, 1);
        assertThat(levelLengths(ink))
                .as("level lines: mm")
                .hasSize(2)
                .satisfiesExactly(
                        length -> assertThat(length).isCloseTo(200, within(SAME)),
                        length -> assertThat(length).isCloseTo(8 * INCH, within(SAME)));
        assertThat(uprightLengths(ink))
                .as("upright lines: mm")
                .hasSize(2)
                .satisfiesExactly(
                        length -> assertThat(length).isCloseTo(150, within(SAME)),
                        length -> assertThat(length).isCloseTo(6 * INCH, within(SAME)));
    }

    private static List<Double> levelLengths(List<Shape> ink) {
        return ink.stream()
                .filter(line -> line.flat() && line.w() > 100)
                .map(line -> {
                    List<Double> marks = ink.stream()
                            .filter(mark ->
                                    mark.upright() && mark.y() < line.y() && mark.y() + mark.h() > line.y() + line.h())
                            .map(mark -> mark.x() + mark.w() / 2)
                            .filter(x -> x > line.x() - 1 && x < line.x() + line.w() + 1)
                            .sorted()
                            .toList();
                    return marks.get(marks.size() - 1) - marks.get(0);
                })
                .sorted()
                .toList();
    }

    private static List<Double> uprightLengths(List<Shape> ink) {
        return levelLengths(ink.stream()
                .map(shape -> new Shape(shape.y(), shape.x(), shape.h(), shape.w(), shape.rgb()))
                .toList());
    }

    /** A bar at each millimetre from 0 to 15 on each side, its outer edge at the millimetre. */
    @ParameterizedTest
    @EnumSource
    void theStairsReachEachEdgeByTheMillimetre(Paper paper) {
        double width = paper.height().mm();
        double height = paper.width().mm();
        List<Shape> ink = ink(paper, 1);
        for (int mm = 0; mm <= RulerSheet.STAIRS; mm++) {
            int step = mm;
            assertThat(ink).as("bar at " + mm + " mm").anySatisfy(bar -> assertBar(bar, bar.y(), step, bar.w()));
            assertThat(ink).anySatisfy(bar -> assertBar(bar, height - bar.y() - bar.h(), step, bar.w()));
            assertThat(ink).anySatisfy(bar -> assertBar(bar, bar.x(), step, bar.h()));
            assertThat(ink).anySatisfy(bar -> assertBar(bar, width - bar.x() - bar.w(), step, bar.h()));
        }
    }

    private static void assertBar(Shape bar, double fromEdge, int mm, double length) {
        assertThat(fromEdge).as(bar.toString()).isCloseTo(mm, within(SAME));
        assertThat(length).as(bar.toString()).isCloseTo(4.5, within(SAME));
    }

    /** So that the sheet may be turned on either edge. */
    @ParameterizedTest
    @EnumSource
    void theLinesOfTheBackRunThroughTheMiddleOfThePage(Paper paper) {
        assertThat(ink(paper, 2))
                .filteredOn(shape -> shape.upright() && shape.h() > 100)
                .singleElement()
                .satisfies(line -> assertThat(line.x() + line.w() / 2)
                        .isCloseTo(paper.height().mm() / 2, within(SAME)));
        assertThat(ink(paper, 2))
                .filteredOn(shape -> shape.flat() && shape.w() > 200)
                .singleElement()
                .satisfies(line -> assertThat(line.y() + line.h() / 2)
                        .isCloseTo(paper.width().mm() / 2, within(SAME)));
    }

    /** A back that lies so far beside its front has its line on the mark of just that number. */
    @ParameterizedTest
    @CsvSource({"LETTER, -4", "LETTER, -0.5", "A4, 0", "A4, 1.5", "LETTER, 3"})
    void theMarkOnWhichTheLineOfTheBackLiesTellsTheOffset(Paper paper, double offset) {
        double middleX = paper.height().mm() / 2;
        double middleY = paper.width().mm() / 2;
        Shape hit = marks(paper).stream()
                .min(Comparator.comparingDouble(mark -> Math.abs(mark.x() + mark.w() / 2 - middleX - offset)))
                .orElseThrow();
        assertThat(hit.x() + hit.w() / 2).isCloseTo(middleX + offset, within(SAME));
        assertThat(number(paper, hit.y() + hit.h() / 2)).isCloseTo(offset, within(0.01));
        assertThat(ink(paper, 1))
                .filteredOn(mark -> mark.flat() && Math.abs(mark.w() - 3.2) < SAME)
                .anySatisfy(mark -> assertThat(mark.y() + mark.h() / 2).isCloseTo(middleY + offset, within(SAME)));
    }

    /** The short upright marks beside the numbers. */
    private static List<Shape> marks(Paper paper) {
        return ink(paper, 1).stream()
                .filter(mark -> mark.upright() && Math.abs(mark.h() - 3.2) < SAME)
                .toList();
    }

    /** The number printed beside a height, between its two neighbours where it has none of its own. */
    private static double number(Paper paper, double y) {
        List<Word> numbers = PdfWords.of(pdf(paper)).stream()
                .filter(word -> word.page() == 1 && word.text().matches("0|[+\u2212]\\d"))
                .filter(word -> word.x() < paper.height().mm() / 2
                        && word.x() > paper.height().mm() / 2 - 14)
                .toList();
        assertThat(numbers).hasSize(9);
        return numbers.stream()
                .filter(word -> Math.abs(word.y() - 1.3 - y) < 5)
                .mapToDouble(word -> Double.parseDouble(word.text().replace('\u2212', '-')))
                .average()
                .orElseThrow();
    }

    /** Whichever way the sheet is turned, nothing but the line shows through behind the marks. */
    @ParameterizedTest
    @EnumSource
    void noWordOfTheBackStandsBehindTheMarks(Paper paper) {
        double middleX = paper.height().mm() / 2;
        double middleY = paper.width().mm() / 2;
        assertThat(PdfWords.of(pdf(paper)).stream().filter(word -> word.page() == 2 && word.y() > 24))
                .isNotEmpty()
                .allSatisfy(word -> {
                    assertThat(Math.abs(word.x() - middleX)).as(word.toString()).isGreaterThan(6);
                    assertThat(Math.abs(word.y() - middleY)).as(word.toString()).isGreaterThan(6);
                });
    }

    /** By hand: 199 / 2 = 99.5; 151 / 1.5 = 100.67; 198.5 / 2 = 99.25 and 149 / 1.5 = 99.33, to a tenth. */
    @Test
    void theTableAndTheExampleTellWhatToWrite() {
        RulerView view = RulerPages.view(new RulerSheet(Paper.A4));
        assertThat(view.table())
                .hasSize(9)
                .contains(
                        new RulerView.Row("199", "99.5", "149", "99.3"),
                        new RulerView.Row("200", "100", "150", "100"),
                        new RulerView.Row("201", "100.5", "151", "100.7"));
        assertThat(view.example().line()).isEqualTo("99.3, 99.3, 0.5, -1");
    }

    /** The same lines by another reader, poppler, where it is there. */
    @ParameterizedTest
    @EnumSource
    void popplerDrawsTheLongLinesInTheirTrueLength(Paper paper, @TempDir Path folder)
            throws IOException, InterruptedException {
        assumeThat(Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                        .anyMatch(place -> Files.isExecutable(Path.of(place, "pdftoppm"))))
                .isTrue();
        Path file = Files.write(folder.resolve("ruler.pdf"), pdf(paper));
        Process process = new ProcessBuilder(
                        "pdftoppm",
                        "-r",
                        "300",
                        "-gray",
                        "-l",
                        "1",
                        "-singlefile",
                        file.toString(),
                        folder.resolve("p").toString())
                .inheritIO()
                .start();
        assertThat(process.waitFor()).isZero();
        Grey grey = Grey.read(Files.readAllBytes(folder.resolve("p.pgm")));
        double y = paper.width().mm() - 31;
        double middle = paper.height().mm() / 2;
        assertThat(grey.upright(middle + 100, y - 2, y - 1) - grey.upright(middle - 100, y - 2, y - 1))
                .isCloseTo(200, within(SAME));
        assertThat(grey.level(25.5 + 150, 26, 27) - grey.level(25.5, 26, 27)).isCloseTo(150, within(SAME));
    }

    /** A grey picture of 300 dots an inch. */
    private static final class Grey {
        private static final double DOTS_A_MM = 300 / 25.4;

        private final byte[] dots;
        private final int width;

        private Grey(byte[] dots, int width) {
            this.dots = dots;
            this.width = width;
        }

        /** Reads a binary PGM (the netpbm format's own description: P5, width, height, most, then the dots). */
        static Grey read(byte[] pgm) throws IOException {
            try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(pgm))) {
                int[] numbers = new int[3];
                in.skipNBytes(3);
                for (int i = 0; i < numbers.length; i++) {
                    for (int sign = in.read(); !Character.isWhitespace(sign); sign = in.read()) {
                        numbers[i] = numbers[i] * 10 + sign - '0';
                    }
                }
                return new Grey(in.readAllBytes(), numbers[0]);
            }
        }

        /** Where the middle of an upright line near a place lies: mm. */
        double upright(double near, double from, double to) {
            return middle(near, from, to, 1, width);
        }

        double level(double near, double from, double to) {
            return middle(near, from, to, width, 1);
        }

        private double middle(double near, double from, double to, int across, int along) {
            double dark = 0;
            double moment = 0;
            for (int i = (int) ((near - 0.8) * DOTS_A_MM); i < (near + 0.8) * DOTS_A_MM; i++) {
                for (int j = (int) (from * DOTS_A_MM); j < to * DOTS_A_MM; j++) {
                    double ink = 255 - (dots[i * across + j * along] & 0xff);
                    dark += ink;
                    moment += ink * (i + 0.5);
                }
            }
            return moment / dark / DOTS_A_MM;
        }
    }
}
