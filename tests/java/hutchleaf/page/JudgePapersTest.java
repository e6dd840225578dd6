package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.contest.QuestionSet;
import hutchleaf.contest.QuestionSets;
import hutchleaf.contest.Samples;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.page.JudgedClass.Beside;
import hutchleaf.page.JudgedClass.Entrant;
import hutchleaf.page.PdfInk.Shape;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A judge's paper with a class written into it, read back part by part. */
final class JudgePapersTest {
    private static final Press PRESS = new Press(path -> Optional.empty());
    private static final String CLUB = "Quarry Bend Small Stock Club";
    private static final String LONG = "MAXIMILIANA-WILHELMINA QUARRY-BROOKWOOD-WINTERGREEN";
    private static final double ROUNDING = 0.1;

    private final Problems problems = new Problems();

    static Stream<Arguments> sheets() {
        return Stream.of(Level.JUNIOR, Level.SENIOR)
                .flatMap(level -> Stream.of(Paper.values())
                        .flatMap(paper -> Stream.of(Beside.INITIAL, Beside.WHOLE)
                                .map(beside -> Arguments.of(level, paper, beside))));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void whatIsWrittenIntoAScoreSheetStaysInItsPlacesAndMovesNothing(Level level, Paper paper, Beside beside) {
        List<Entrant> entrants = List.of(
                new Entrant(4, "Juniper Hale", "Cocoa", "Havana", Optional.of("JH7")),
                new Entrant(1234, LONG, LONG, "Netherland Dwarf", Optional.empty()));
        byte[] filled = part(shown(level, beside, entrants, 0, 1), paper, "score sheets");
        byte[] blank = bytes(publications(paper).scoreSheet(edition(level), CLUB, problems));
        double right = paper.width().mm() - 9;
        double narrow = 206.9 - right;

        for (int page = 1; page <= 3; page++) {
            assertNothingMoved(filled, page, blank);
            List<Word> written = written(filled, page, blank);
            assertThat(written)
                    .as("page %s", page)
                    .allMatch(word -> within(word, right - 34, right, 8.3, 24.3)
                            || within(word, 20.5, 73, 29, 34)
                            || within(word, 106.5, right, 29, 34)
                            || within(word, 49, 68.5, 37, 42.2)
                            || within(word, 81.5, 134 - narrow, 37, 42.2)
                            || within(
                                    word,
                                    38,
                                    62,
                                    paper.height().mm() - 16,
                                    paper.height().mm() - 7.4)
                            || within(
                                    word,
                                    86,
                                    right,
                                    paper.height().mm() - 15,
                                    paper.height().mm() - 9.3));
        }
        String whole = beside == Beside.WHOLE ? "Juniper Hale" : "Juniper H.";
        assertThat(words(written(filled, 1, blank))).contains("4", whole, "Cocoa, Havana", "Quarry Bend Summer Show");
        assertThat(words(written(filled, 2, blank))).contains("1234").contains("…");
        assertThat(words(written(filled, 3, blank))).as("spare").doesNotContain("4 ", "Juniper");
        JudgePaperTest.assertFitToWriteOn(filled);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aGridHasNumbersAndNamesInItsColumnsAndNothingMoves(Level level, Paper paper, Beside beside) {
        List<Entrant> entrants = entrants(12);
        byte[] filled = part(shown(level, beside, entrants, 0, 2), paper, "score grid");
        byte[] blank = bytes(publications(paper).scoreGrid(edition(level), problems));
        double first = paper == Paper.LETTER ? 57 : 63;
        double wide = paper == Paper.LETTER ? 20.2 : 21.2;
        double gutter = paper == Paper.LETTER ? 6.2 : 6.6;

        assertThat(pages(filled)).isEqualTo(2);
        for (int page = 1; page <= 2; page++) {
            assertNothingMoved(filled, page, blank);
            List<Word> written = written(filled, page, blank);
            for (int column = 0; column < 10; column++) {
                double left = first + column * wide + (column >= 5 ? gutter : 0);
                double from = left;
                List<Word> own = written.stream()
                        .filter(word -> word.y() > 20 && word.x() > from && word.x() < from + wide)
                        .toList();
                int place = (page - 1) * 10 + column;
                if (place < entrants.size()) {
                    assertThat(own).allMatch(word -> word.x() + word.width() < from + wide, "in its column");
                    assertThat(words(own))
                            .isEqualTo(entrants.get(place).number() + " "
                                    + entrants.get(place).initialed() + " "
                                    + entrants.get(place).number());
                } else {
                    assertThat(own).as("late entries").isEmpty();
                }
            }
        }
        JudgePaperTest.assertFitToWriteOn(filled);
    }

    @Test
    void aNameTooLongForAColumnIsPrintedByItsInitials() {
        List<Entrant> one = List.of(new Entrant(7, "Maximiliana Ord", "Pip", "Polish", Optional.empty()));
        byte[] grid = part(shown(Level.JUNIOR, Beside.WHOLE, one, 0, 1), Paper.LETTER, "score grid");
        assertThat(PdfWords.text(grid, 1)).contains("M. O.").doesNotContain("Maximiliana");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theListsCanBeWrittenOn(Paper paper) {
        JudgedClass shown = shown(Level.JUNIOR, Beside.INITIAL, entrants(23), 0, 3);
        for (String part : List.of("check-in", "sealed questions", "call-back and tally")) {
            JudgePaperTest.assertFitToWriteOn(part(shown, paper, part));
        }
        byte[] back = part(shown, paper, "call-back and tally");
        assertThat(boxes(back, 1, 6))
                .as("numbers called back, places")
                .hasSize(2 * 10)
                .allMatch(JudgePapersTest::holdsANumber);
        assertThat(boxes(back, 1, 0))
                .as("what for")
                .hasSize(2 * 10 + 3 * 10)
                .allMatch(box -> box.w() >= 4 && box.h() >= 4);
        List<Shape> tally = new ArrayList<>();
        for (int page = 2; page <= pages(back); page++) {
            tally.addAll(boxes(back, page, 0));
        }
        assertThat(tally)
                .as("two judges, sum and place for 23 and 3 spare")
                .hasSize(4 * 26)
                .allMatch(JudgePapersTest::holdsANumber);
        byte[] front = part(shown, paper, "check-in");
        assertThat(IntStream.rangeClosed(1, pages(front))
                        .mapToObj(page -> boxes(front, page, 0))
                        .flatMap(List::stream))
                .as("here and pinned, then shown")
                .hasSize(2 * 26 + 26)
                .allMatch(box -> box.w() >= 4 && box.h() >= 4);
    }

    private static boolean holdsANumber(Shape box) {
        return box.w() >= 9 && box.h() >= 8;
    }

    @Test
    void theTallyAddsWhatTheJudgesCanGive() {
        JudgedClass two = shown(Level.SENIOR, Beside.INITIAL, entrants(3), 0, 1);
        int total = edition(Level.SENIOR)
                .library()
                .contest()
                .sheetFor(Level.SENIOR)
                .orElseThrow()
                .total();
        String text = PdfWords.text(part(two, Paper.A4, "call-back and tally"), 2);
        assertThat(text).contains("Judge 1", "Judge 2", "of " + total, "of " + 2 * total, "Tie broken on");
    }

    @Test
    void whereNobodyIsPlacedNothingIsCalledBackOrAddedUp() {
        JudgedClass shown = shown(Level.JUNIOR, Beside.INITIAL, entrants(3), 0, 1);
        JudgedClass unplaced = new JudgedClass(
                shown.show(),
                shown.division(),
                shown.level(),
                new JudgedClass.Judging(1, 2, false),
                shown.beside(),
                shown.entrants(),
                shown.amounts());
        assertThat(titles(unplaced)).doesNotContain("Junior call-back and tally");
        assertThat(titles(shown)).contains("Junior call-back and tally");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theYoungestGetTwoSlipsAPageWithTheirNamesAndNoPoints(Paper paper) {
        JudgedClass shown = shown(Level.PRIMARY, Beside.INITIAL, entrants(3), 0, 1);
        assertThat(titles(shown))
                .containsExactly("Primary check-in", "Primary slips", "Primary questions for the judge");
        byte[] slips = part(shown, paper, "slips");
        byte[] blank = bytes(publications(paper).wentWell(edition(Level.PRIMARY), CLUB, problems));
        assertThat(pages(slips)).isEqualTo(2);
        for (int page = 1; page <= 2; page++) {
            assertNothingMoved(slips, page, blank);
        }
        assertThat(words(written(slips, 1, blank)))
                .contains("Number 10", "HeathA O.", "Rabbit0")
                .contains("Number 11", "HeathB O.", "Rabbit1");
        assertThat(words(written(slips, 2, blank))).contains("Number 12").doesNotContain("13");
        JudgePaperTest.assertFitToWriteOn(slips);
    }

    @Test
    void withNumbersAloneNoJudgesPageTellsWhoOrWhichRabbit() {
        JudgedClass shown = shown(Level.JUNIOR, Beside.NUMBER, entrants(3), 0, 1);
        byte[] front = part(shown, Paper.LETTER, "check-in");
        assertThat(PdfWords.text(front, 1)).as("the clerk's").contains("HeathA O.", "Rabbit0, Polish");
        assertThat(PdfWords.text(front, 2)).as("order").contains("10", "Note").doesNotContain("HeathA", "Rabbit0");
        assertThat(PdfWords.text(part(shown, Paper.LETTER, "score sheets"), 1)).doesNotContain("HeathA", "Rabbit0");
        assertThat(PdfWords.text(part(shown, Paper.LETTER, "score grid"), 1)).doesNotContain("HeathA");
    }

    @Test
    void withoutNamesTheRabbitStillStandsOnTheSheet() {
        JudgedClass shown = shown(Level.JUNIOR, Beside.RABBIT, entrants(1), 0, 1);
        assertThat(PdfWords.text(part(shown, Paper.LETTER, "score sheets"), 1))
                .contains("Rabbit0, Polish")
                .doesNotContain("HeathA");
        assertThat(PdfWords.text(part(shown, Paper.LETTER, "check-in"), 2))
                .contains("Rabbit0", "Polish", "Note")
                .doesNotContain("HeathA");
    }

    private List<String> titles(JudgedClass shown) {
        return parts(shown, Paper.LETTER).stream().map(Manuscript::title).toList();
    }

    private List<Manuscript> parts(JudgedClass shown, Paper paper) {
        Edition edition = edition(shown.level());
        List<QuestionSet> sets = QuestionSets.draw(edition, shown.scored() ? 3 : 1, 4, problems);
        List<Manuscript> parts = publications(paper).judge(edition, shown, sets).parts(problems);
        assertThat(problems.sorted()).isEmpty();
        return parts;
    }

    private byte[] part(JudgedClass shown, Paper paper, String what) {
        return bytes(parts(shown, paper).stream()
                .filter(part -> part.title().endsWith(what))
                .findFirst());
    }

    private byte[] bytes(Optional<Manuscript> manuscript) {
        Optional<Printed> printed = manuscript.flatMap(pages -> PRESS.print(pages, problems));
        assertThat(problems.sorted()).isEmpty();
        return RealTree.bytes(printed.orElseThrow());
    }

    private static JudgedClass shown(Level level, Beside beside, List<Entrant> entrants, int open, int spare) {
        return new JudgedClass(
                new JudgedClass.Show(CLUB, "Quarry Bend Summer Show", LocalDate.of(2026, 8, 8)),
                level.title(),
                level,
                new JudgedClass.Judging(1, 2, true),
                beside,
                entrants,
                new JudgedClass.Amounts(open, 1, spare));
    }

    private static List<Entrant> entrants(int count) {
        return IntStream.range(0, count)
                .mapToObj(no -> new Entrant(
                        10 + no, "Heath" + (char) ('A' + no) + " Ord", "Rabbit" + no, "Polish", Optional.of("E" + no)))
                .toList();
    }

    /** Every line, box and word of the blank page stands on the filled one in its place. */
    private static void assertNothingMoved(byte[] filled, int page, byte[] blank) {
        List<Shape> ink = PdfInk.shapes(filled, page);
        assertThat(PdfInk.shapes(blank, 1).stream().filter(shape -> ink.stream().noneMatch(shape::about)))
                .as("lines and boxes not in their places, page %s", page)
                .isEmpty();
        List<Word> words = PdfWords.of(filled);
        assertThat(PdfWords.of(blank).stream()
                        .filter(word -> words.stream().noneMatch(other -> other.page() == page && same(word, other))))
                .as("words not in their places, page %s", page)
                .isEmpty();
    }

    private static List<Word> written(byte[] filled, int page, byte[] blank) {
        List<Word> before = PdfWords.of(blank);
        return PdfWords.of(filled).stream()
                .filter(word -> word.page() == page && before.stream().noneMatch(other -> same(word, other)))
                .toList();
    }

    private static boolean same(Word one, Word other) {
        return one.text().equals(other.text())
                && Math.abs(one.x() - other.x()) < ROUNDING
                && Math.abs(one.y() - other.y()) < ROUNDING;
    }

    /** A word's baseline and its advance lie in a place. */
    private static boolean within(Word word, double left, double right, double top, double foot) {
        return word.x() >= left
                && word.x() + word.width() <= right + ROUNDING
                && word.y() - word.size() * 0.26 >= top - ROUNDING
                && word.y() <= foot;
    }

    private static String words(List<Word> words) {
        return words.stream().map(Word::text).collect(Collectors.joining(" "));
    }

    private static List<Shape> boxes(byte[] pdf, int page, double wider) {
        return PdfInk.boxes(PdfInk.shapes(pdf, page)).stream()
                .filter(box -> box.w() > wider)
                .toList();
    }

    private static int pages(byte[] pdf) {
        return PdfWords.of(pdf).stream().mapToInt(Word::page).max().orElse(0);
    }

    private static Edition edition(Level level) {
        return Samples.edition(level, 9, Levels.ALL);
    }

    private static Publications publications(Paper paper) {
        return JudgeViewsTest.publications(paper);
    }
}
