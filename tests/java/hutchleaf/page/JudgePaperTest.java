package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.contest.QuestionSet;
import hutchleaf.contest.QuestionSets;
import hutchleaf.contest.Samples;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.ScoreSheet;
import hutchleaf.page.PdfInk.Shape;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The judge's paper as it comes out of the press, read back. */
final class JudgePaperTest {
    private static final double MARGIN = 7;
    private static final double LEAST_WIDE = 9;
    private static final double LEAST_HIGH = 8;

    /** Larger than a tick box (4 or 5 mm), smaller than any box for a number. */
    private static final double TICK = 6;

    /** The thinnest line on paper that is written on, 1.1 pt, less the rounding of the engine: mm. */
    private static final double THINNEST = 1.1 * 25.4 / 72 - 0.02;

    private static final Press PRESS = new Press(path -> Optional.empty());

    private final Problems problems = new Problems();

    static Stream<Arguments> scored() {
        return Stream.of(Level.JUNIOR, Level.INTERMEDIATE, Level.SENIOR)
                .flatMap(level -> Stream.of(Paper.values()).map(paper -> Arguments.of(level, paper)));
    }

    @ParameterizedTest
    @MethodSource("scored")
    void aScoreSheetIsOnePageWithABoxForEveryNumber(Level level, Paper paper) {
        Edition edition = edition(level);
        byte[] pdf =
                print(JudgeViewsTest.publications(paper).scoreSheet(edition, "Meadow Lane Rabbit Club", problems), 1);
        ScoreSheet sheet = edition.library().contest().sheetFor(level).orElseThrow();

        // 12 for the blocks, 3 rows, number twice, and the sum line's six.
        assertThat(numberBoxes(pdf)).hasSize(12 + 3 + 2 + 6);
        // Sixteen stops shown and said, judge 1 or 2; 5 mm for "stopped for the rabbit's sake".
        assertThat(ticks(pdf)).hasSize(2 * 16 + 2 + 1);
        assertThat(texts(pdf)).contains("A", "B", "C", "D", "E", "F");
        assertThat(PdfWords.text(pdf, 1))
                .contains(sheet.total() + " points", "of " + sheet.hands(), "of " + sheet.voice())
                .contains("of " + sheet.allThrough(), "of " + sheet.total(), "It costs nothing; score what was told.");
        assertFitToWriteOn(pdf);
    }

    @Test
    void theJuniorSheetKeepsTheJuniorRules() {
        byte[] pdf =
                print(JudgeViewsTest.publications(Paper.LETTER).scoreSheet(edition(Level.JUNIOR), "", problems), 1);

        assertThat(texts(pdf)).containsSequence("a", "helper", "costs", "nothing");
        assertThat(texts(pdf)).containsSequence("part", "the", "fur,", "say", "buck", "or", "doe");
    }

    @ParameterizedTest
    @MethodSource("scored")
    void aGridIsOnePageForTenContestants(Level level, Paper paper) {
        Edition edition = edition(level);
        byte[] pdf = print(JudgeViewsTest.publications(paper).scoreGrid(edition, problems), 1);
        ScoreSheet sheet = edition.library().contest().sheetFor(level).orElseThrow();

        // Number twice, points off, total, tie and place for each of ten; the blocks' cells are ruled, not boxed.
        assertThat(numberBoxes(pdf)).hasSize(6 * 10);
        assertThat(ticks(pdf)).hasSize(10 + 2);
        assertThat(texts(pdf))
                .filteredOn(word -> word.matches("[A-F]|Ap|Ca|Qu"))
                .hasSize(3 * 9);
        assertThat(PdfWords.text(pdf, 1))
                .contains(sheet.hands() + " + " + sheet.voice() + " + " + sheet.allThrough() + ", less points off")
                .contains("Total of " + sheet.total());
        assertRuledWideEnough(pdf);
        assertFitToWriteOn(pdf);
    }

    @ParameterizedTest
    @MethodSource("scored")
    void aQuestionSetIsOnePageWithTenBoxesForEachQuestion(Level level, Paper paper) {
        Edition edition = Samples.edition(level, 9, Levels.ALL);
        List<QuestionSet> sets = QuestionSets.draw(edition, 3, 4, problems);
        byte[] pdf = print(JudgeViewsTest.publications(paper).questions(edition, sets, Map.of(), problems), 3);

        for (int page = 1; page <= 3; page++) {
            int points = sets.get(page - 1).questions().stream()
                    .mapToInt(asked -> asked.question().points().size())
                    .sum();
            List<Shape> boxes = PdfInk.boxes(PdfInk.shapes(pdf, page));
            assertThat(boxes.stream().filter(box -> box.w() > TICK))
                    .as("page %s", page)
                    .hasSize(6 * 10);
            assertThat(boxes.stream().filter(box -> box.w() <= TICK))
                    .as("page %s", page)
                    .hasSize(points);
            assertThat(PdfWords.text(pdf, page))
                    .contains("Set " + sets.get(page - 1).letter() + " of three")
                    .contains("keep sealed until the class is called");
        }
        numberBoxes(pdf);
        assertFitToWriteOn(pdf);
    }

    @Test
    void longAnswersTightenAndAreNeverDropped() {
        Edition edition = edition(Level.SENIOR);
        QuestionSet wordy = new QuestionSet(
                "A",
                edition.library().topics().stream()
                        .flatMap(topic -> topic.practice().questions().stream()
                                .filter(question -> question.points().size() == 4)
                                .map(question -> new QuestionSet.Asked(question, topic.head())))
                        .limit(6)
                        .toList());

        byte[] pdf = print(
                JudgeViewsTest.publications(Paper.LETTER).questions(edition, List.of(wordy), Map.of(), problems), 1);

        assertThat(ticks(pdf)).hasSize(6 * 4);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void primaryGetsTwoSlipsOnAPageAndNoPoints(Paper paper) {
        Edition edition = edition(Level.PRIMARY);
        byte[] pdf = print(JudgeViewsTest.publications(paper).wentWell(edition, "", problems), 1);

        int lines = edition.library().contest().wentWell().ticks().size();
        assertThat(PdfInk.boxes(PdfInk.shapes(pdf, 1)))
                .hasSize(2 * lines)
                .allMatch(box -> box.w() >= 7 && box.h() >= 7);
        assertThat(PdfWords.text(pdf, 1)).doesNotContain("points", "Points", "score", "Score");
        assertFitToWriteOn(pdf);
    }

    @Test
    void primaryQuestionsHaveTicksButNoBoxesForPoints() {
        Edition edition = Samples.edition(Level.PRIMARY, 9, Levels.ALL);
        List<QuestionSet> sets = QuestionSets.draw(edition, 1, 4, problems);

        byte[] pdf = print(JudgeViewsTest.publications(Paper.A4).questions(edition, sets, Map.of(), problems), 1);

        assertThat(PdfInk.boxes(PdfInk.shapes(pdf, 1))).isNotEmpty().allMatch(box -> box.w() < TICK);
        assertFitToWriteOn(pdf);
    }

    private byte[] print(Optional<Manuscript> manuscript, int pages) {
        assertThat(problems.sorted()).isEmpty();
        Printed printed = PRESS.print(manuscript.orElseThrow(), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
        assertThat(problems.sorted()).isEmpty();
        assertThat(printed.pages()).isEqualTo(pages);
        try (InputStream in = printed.open()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Inside the margins, no thin line, no small type, black on white, and PDF/UA-1. */
    static void assertFitToWriteOn(byte[] pdf) {
        try (var document = org.apache.pdfbox.Loader.loadPDF(pdf)) {
            double width = document.getPage(0).getMediaBox().getWidth() * 25.4 / 72;
            double height = document.getPage(0).getMediaBox().getHeight() * 25.4 / 72;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertThat(PdfInk.shapes(pdf, page))
                        .allMatch(shape -> inside(shape.x(), shape.w(), width), "inside the sides")
                        .allMatch(shape -> inside(shape.y(), shape.h(), height), "inside top and foot")
                        .allMatch(shape -> Math.min(shape.w(), shape.h()) >= THINNEST, "thick enough")
                        .allMatch(shape -> shape.rgb() == 0 || shape.rgb() == 0xffffff, "black or white");
            }
            assertThat(PdfWords.of(pdf))
                    .allMatch(word -> inside(word.x(), word.width(), width), "inside the sides")
                    .allMatch(word -> inside(word.y() - word.size() * 0.26, word.size() * 0.33, height), "inside")
                    .allMatch(word -> word.size() >= 10 - 0.01, "10 pt or more");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }

    private static boolean inside(double from, double length, double whole) {
        return from >= MARGIN - 0.05 && from + length <= whole - MARGIN + 0.05;
    }

    /** The boxes that hold a number; each has to be large enough. */
    private static List<Shape> numberBoxes(byte[] pdf) {
        List<Shape> boxes = PdfInk.boxes(PdfInk.shapes(pdf, 1)).stream()
                .filter(box -> box.w() > TICK)
                .toList();
        assertThat(boxes).allMatch(box -> box.w() >= LEAST_WIDE && box.h() >= LEAST_HIGH);
        return boxes;
    }

    private static List<Shape> ticks(byte[] pdf) {
        return PdfInk.boxes(PdfInk.shapes(pdf, 1)).stream()
                .filter(box -> box.w() <= TICK)
                .toList();
    }

    /** In the ruled part of a grid, uprights leave 9 mm of white between them. */
    private static void assertRuledWideEnough(byte[] pdf) {
        List<Shape> uprights = PdfInk.shapes(pdf, 1).stream()
                .filter(shape -> shape.upright() && shape.h() > 80)
                .distinct()
                .sorted(java.util.Comparator.comparingDouble(Shape::x))
                .toList();
        // Six lines on each side of the gutter, and one in the middle of each contestant.
        assertThat(uprights).hasSize(2 * 6 + 10);
        List<Double> gaps = new ArrayList<>();
        for (int index = 1; index < uprights.size(); index++) {
            gaps.add(uprights.get(index).x()
                    - uprights.get(index - 1).x()
                    - uprights.get(index - 1).w());
        }
        assertThat(gaps.stream().filter(gap -> gap >= LEAST_WIDE)).hasSize(20);
    }

    private static List<String> texts(byte[] pdf) {
        return PdfWords.of(pdf).stream().map(PdfWords.Word::text).toList();
    }

    private static Edition edition(Level level) {
        return Samples.edition(level, 8, Levels.ALL);
    }
}
