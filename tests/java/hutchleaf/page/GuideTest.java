package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.edition.Stop;
import hutchleaf.model.Level;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Printed;
import hutchleaf.sheet.Paper;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The study guides of the project's own tree, read back from the finished PDFs. */
final class GuideTest {
    /** Letter's text area ends 20 mm above its lower edge. */
    private static final double TEXT_ENDS = 279.4 - 20;

    /** Where the rail and the text column start: mm from the left edge. */
    private static final double RAIL = 20;

    private static final double COLUMN = 60;

    private static final int CONTENTS = 3;

    @ParameterizedTest
    @EnumSource(Level.class)
    void everyNumberInTheContentsIsThePageFound(Level level) {
        Printed guide = RealTree.guide(level, Paper.LETTER);
        byte[] pdf = RealTree.bytes(guide);
        String contents = IntStream.range(CONTENTS, guide.pageOf().getOrDefault("safety", 0))
                .mapToObj(page -> PdfWords.text(pdf, page))
                .collect(Collectors.joining(" "))
                .replaceAll("\\s+", " ");
        RealTree.edition(level).all().map(Leaf::head).forEach(head -> {
            int page = guide.pageOf().getOrDefault(head.anchor(), 0);
            String title = title(level, head.anchor(), head.title());
            assertThat(contents).as(head.path()).contains(title + " " + page);
            assertThat(PdfWords.text(pdf, page).replaceAll("\\s+", " "))
                    .as("page %d, where %s starts", page, head.path())
                    .contains(title);
        });
    }

    private static String title(Level level, String anchor, String title) {
        Edition edition = RealTree.edition(level);
        return edition.stops().stream()
                .filter(stop -> stop.leaf().head().anchor().equals(anchor))
                .map(stop -> stop.station().name())
                .findFirst()
                .orElse(title);
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void noPageButTheCoverHasFewerThanTwelveWords(Level level) {
        Printed guide = RealTree.guide(level, Paper.LETTER);
        Map<Integer, Long> words = PdfWords.of(RealTree.bytes(guide)).stream()
                .collect(Collectors.groupingBy(Word::page, Collectors.counting()));
        IntStream.rangeClosed(2, guide.pages())
                .forEach(page -> assertThat(words.getOrDefault(page, 0L))
                        .as("words on page %d of %d", page, guide.pages())
                        .isGreaterThanOrEqualTo(12));
    }

    /** Sizes: design rule of the pages; primary 16, junior 13, intermediate 11.5, senior 10.5, nothing under 9.5. */
    @ParameterizedTest
    @CsvSource({"PRIMARY, 16", "JUNIOR, 13", "INTERMEDIATE, 11.5", "SENIOR, 10.5"})
    void bodyTypeHasTheSizeOfItsLevel(Level level, double body) {
        List<Word> words = PdfWords.of(RealTree.bytes(RealTree.guide(level, Paper.LETTER)));
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
    @EnumSource(Level.class)
    void noTitleStandsInTheLastTwentyMillimetresWithoutTwoLinesAfterIt(Level level) {
        double title = TypeScale.of(level).body() * 1.9;
        Map<Integer, List<Word>> pages = PdfWords.of(RealTree.bytes(RealTree.guide(level, Paper.LETTER))).stream()
                .collect(Collectors.groupingBy(Word::page));
        pages.forEach((page, words) -> words.stream()
                .filter(word -> word.size() > title && word.y() > TEXT_ENDS - 20 && page > 1)
                .forEach(word -> assertThat(words.stream()
                                .filter(after -> after.y() > word.y() + 1 && after.y() < TEXT_ENDS + 1)
                                .map(after -> Math.round(after.y()))
                                .distinct()
                                .count())
                        .as("lines after the title %s", word)
                        .isGreaterThanOrEqualTo(2)));
    }

    /** A heading in the rail shares its baseline with its first line; a section of one line is whole and may end a page. */
    @ParameterizedTest
    @EnumSource(Level.class)
    void noRailHeadingStandsInTheLastTwentyMillimetresWithoutItsLines(Level level) {
        double body = TypeScale.of(level).body();
        Map<Integer, List<Word>> pages = PdfWords.of(RealTree.bytes(RealTree.guide(level, Paper.LETTER))).stream()
                .filter(word -> word.y() < TEXT_ENDS)
                .collect(Collectors.groupingBy(Word::page));
        pages.forEach((page, words) -> words.stream()
                .filter(word -> page > 1 && word.y() > TEXT_ENDS - 20)
                .filter(word -> Math.abs(word.x() - RAIL) < 0.5 && Math.abs(word.size() - body) < 0.05)
                .forEach(word -> {
                    long lines = words.stream()
                            .filter(other -> other.x() > COLUMN && other.y() > word.y() - body)
                            .map(other -> Math.round(other.y()))
                            .distinct()
                            .count();
                    assertThat(lines).as("lines beside or under %s", word).isPositive();
                    assertThat(lines >= 2 || !goesOn(pages.getOrDefault(page + 1, List.of()), body))
                            .as("one line under %s, and the rest on the next page", word)
                            .isTrue();
                }));
    }

    /** Whether a page starts in the text column, and not with a title: what stood before it was cut. */
    private static boolean goesOn(List<Word> words, double body) {
        double top = words.stream().mapToDouble(Word::y).min().orElse(0);
        return words.stream()
                .filter(word -> word.y() < top + 1)
                .allMatch(word -> word.x() > COLUMN && word.size() < body * 1.5);
    }

    /** A heading in the rail that is higher than its lines would hang over the foot of its page, or over the next one's top. */
    @ParameterizedTest
    @EnumSource
    void noWordStandsAboveThePageOrUnderItsText(Level level) {
        byte[] pdf = RealTree.bytes(RealTree.guide(level, Paper.LETTER));
        List<Word> words = PdfWords.of(pdf);
        double foot = words.stream()
                .filter(word -> word.page() == 3)
                .mapToDouble(Word::y)
                .max()
                .orElseThrow();
        assertThat(words).filteredOn(word -> word.page() > 1).allSatisfy(word -> {
            assertThat(word.y()).as(word.toString()).isGreaterThan(15);
            if (word.y() > TEXT_ENDS + 1) {
                assertThat(word.y()).as(word + " in the foot").isCloseTo(foot, within(2.5));
            }
        });
    }

    @ParameterizedTest
    @EnumSource(
            value = Level.class,
            names = {"JUNIOR", "INTERMEDIATE", "SENIOR"})
    void aStopIsASpreadThatOpensOnAnEvenPage(Level level) {
        Printed guide = RealTree.guide(level, Paper.LETTER);
        int last = 0;
        for (Stop stop : RealTree.edition(level).stops()) {
            int page = guide.pageOf().getOrDefault(stop.leaf().head().anchor(), 0);
            assertThat(page % 2)
                    .as("stop %d on page %d", stop.station().no(), page)
                    .isZero();
            assertThat(guide.pageOf().get(stop.leaf().head().anchor() + "-say")).isEqualTo(page + 1);
            assertThat(last == 0 || page == last + 2).isTrue();
            last = page;
        }
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void aGuideIsPdfUa(Level level) {
        assertThat(PdfUa.violations(RealTree.bytes(RealTree.guide(level, Paper.LETTER))))
                .isEmpty();
    }
}
