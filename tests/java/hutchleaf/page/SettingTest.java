package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.model.Level;
import hutchleaf.model.Setting;
import hutchleaf.press.PdfFonts;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Guides in large print and in easy read, measured in the finished files. */
final class SettingTest {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final double RIGHT_MARGIN = 17.9;
    private static final double LETTER_WIDTH = 215.9;

    private static byte[] guide(Level level, Setting setting) {
        return RealTree.bytes(RealTree.guide(level, setting));
    }

    /** 18 pt is large print: American Printing House for the Blind, guidelines for print document design (Kitchel). */
    @ParameterizedTest
    @EnumSource(
            value = Level.class,
            names = {"PRIMARY", "JUNIOR"})
    void noLetterOfLargePrintIsUnderEighteenPoints(Level level) {
        assertThat(PdfWords.of(guide(level, Setting.LARGE)))
                .hasSizeGreaterThan(9_000)
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThanOrEqualTo(18));
    }

    /** Headings 22, subheads 20: American Council of the Blind, Board of Publications, 2022. */
    @Test
    void headingsOfLargePrintStandOut() {
        byte[] pdf = guide(Level.JUNIOR, Setting.LARGE);

        assertThat(PdfWords.of(pdf, "inside"))
                .anySatisfy(word -> assertThat(word.size()).isEqualTo(34));
        assertThat(PdfWords.of(pdf, "hands"))
                .anySatisfy(word -> assertThat(word.size()).isEqualTo(20));
    }

    /**
     * Lines of 1.5: American Council of the Blind and Council of Citizens with Low Vision, older guidelines; British
     * Dyslexia Association style guide, from memory.
     */
    @ParameterizedTest
    @EnumSource(
            value = Setting.class,
            names = {"LARGE", "EASY"})
    void linesStandOneAndAHalfTimesTheirSizeApart(Setting setting) {
        double size = setting == Setting.LARGE ? 18 : 13;
        Map<Integer, TreeSet<Double>> baselines = new TreeMap<>();
        PdfWords.of(guide(Level.JUNIOR, setting)).stream()
                .filter(word -> word.size() == size)
                .forEach(word -> baselines
                        .computeIfAbsent(word.page(), page -> new TreeSet<>())
                        .add(Math.round(word.y() * 20) / 20.0));
        Map<Double, Integer> gaps = new TreeMap<>();
        baselines.values().forEach(page -> {
            List<Double> lines = new ArrayList<>(page);
            for (int line = 1; line < lines.size(); line++) {
                gaps.merge(Math.round((lines.get(line) - lines.get(line - 1)) * 10) / 10.0, 1, Integer::sum);
            }
        });

        double usual = gaps.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
        assertThat(usual).isCloseTo(1.5 * size * MM_PER_POINT, within(0.1));
    }

    /** The stop rule is ours: it stands wherever a member may look while the rabbit is on its back. */
    @ParameterizedTest
    @EnumSource(
            value = Setting.class,
            names = {"LARGE", "EASY"})
    void theStopRuleStandsOnEveryPageOfStopsFiveToThirteen(Setting setting) {
        Map<Integer, String> pages = PdfWords.of(guide(Level.JUNIOR, setting)).stream()
                .collect(Collectors.groupingBy(
                        Word::page, TreeMap::new, Collectors.mapping(Word::text, Collectors.joining(" "))));
        List<Word> numerals = PdfWords.of(guide(Level.JUNIOR, setting)).stream()
                .filter(word -> word.size() == 62)
                .toList();
        int first = numerals.get(4).page();
        int after = numerals.get(13).page();

        assertThat(numerals).hasSize(16);
        assertThat(after - first).isGreaterThanOrEqualTo(18);
        pages.forEach((page, words) -> {
            if (page >= first && page < after) {
                assertThat(words)
                        .as("page " + page)
                        .contains("Stop rule. It kicks, pants or shakes?", "Turn it back at once");
            }
        });
    }

    @ParameterizedTest
    @EnumSource(
            value = Setting.class,
            names = {"LARGE", "EASY"})
    void noWordRunsIntoTheRightMargin(Setting setting) {
        assertThat(PdfWords.of(guide(Level.JUNIOR, setting)))
                .allSatisfy(word -> assertThat(word.x() + word.width())
                        .as(word.toString())
                        .isLessThanOrEqualTo(LETTER_WIDTH - RIGHT_MARGIN + 1));
    }

    /** No italics, wider letters: British Dyslexia Association style guide, from memory. */
    @Test
    void easyReadHasNoItalicsAndWiderWords() throws IOException {
        byte[] easy = guide(Level.JUNIOR, Setting.EASY);
        byte[] ordinary = RealTree.bytes(RealTree.guide(Level.JUNIOR, Paper.LETTER));

        assertThat(PdfFonts.of(easy)).noneMatch(font -> font.contains("Italic") || font.contains("Oblique"));
        assertThat(PdfFonts.of(ordinary)).anyMatch(font -> font.contains("Italic"));
        assertThat(narrowest(easy) - narrowest(ordinary)).isGreaterThanOrEqualTo(5 * 0.08 * 13 * MM_PER_POINT);
    }

    private static double narrowest(byte[] pdf) {
        return PdfWords.of(pdf, "rabbit").stream()
                .filter(word -> word.size() == 13)
                .mapToDouble(Word::width)
                .min()
                .orElseThrow();
    }

    /** PDF/UA-1 (ISO 14289-1:2014), by veraPDF. */
    @ParameterizedTest
    @EnumSource(
            value = Setting.class,
            names = {"LARGE", "EASY"})
    void everyoneCanReadIt(Setting setting) {
        assertThat(PdfUa.violations(guide(Level.JUNIOR, setting))).isEmpty();
    }
}
