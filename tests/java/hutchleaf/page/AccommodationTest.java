package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Stop;
import hutchleaf.model.HelpWords;
import hutchleaf.model.Level;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Setting;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.sheet.Paper;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The talk-through sheet and the cue card of each level, read back from the finished files. */
final class AccommodationTest {
    private static final double LETTER_WIDTH = 215.9;
    private static final double LETTER_HEIGHT = 279.4;

    /** Home printers leave the edge blank; common practice, no source. */
    private static final double BLANK_EDGE = 7;

    private static byte[] talkThrough(Level level, Setting setting) {
        return RealTree.bytes(RealTree.talkThrough(level, setting));
    }

    private static byte[] cueCard(Level level, Setting setting) {
        return RealTree.bytes(RealTree.cueCard(level, Paper.LETTER, setting));
    }

    /** In the order in which the file paints it, which its tags follow; without the foot of each page. */
    private static String painted(byte[] pdf) {
        return joined(PdfWords.of(pdf));
    }

    private static String joined(List<Word> words) {
        return words.stream().map(Word::text).collect(Collectors.joining(" ")).replaceAll("[\\s\u00A0]+", " ");
    }

    private static String letters(String text) {
        return text.replaceAll("\\{[^}]*}", " ").replaceAll("[^\\p{L}]+", " ").strip();
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void everyStopStandsOnTheTalkThroughSheetInTheOrderOfTheLevel(Level level) {
        Edition edition = RealTree.edition(level);
        String text = joined(PdfWords.of(talkThrough(level, Setting.ORDINARY)).stream()
                .sorted(Comparator.comparing(Word::page)
                        .thenComparing(word -> Math.round(word.y() * 2))
                        .thenComparing(Word::x))
                .toList());
        int from = text.indexOf("At each stop");
        assertThat(from).isPositive();
        for (Stop stop : edition.stops()) {
            String head = stop.station().no() + " " + stop.station().name();
            int at = text.indexOf(head, from);
            assertThat(at).as(head + " after " + from).isGreaterThanOrEqualTo(from);
            from = at + head.length();
        }
    }

    /** The words to the judge and the caution are the routine's own, whole: whoever directs a helper keeps all of them. */
    @ParameterizedTest
    @EnumSource(Level.class)
    void eachStopHasItsOwnWordsAndItsWholeCaution(Level level) {
        Edition edition = RealTree.edition(level);
        String text = letters(painted(talkThrough(level, Setting.LARGE)));
        for (Stop stop : edition.stops()) {
            HelpWords.Line line = edition.library()
                    .contest()
                    .help()
                    .line(stop.station().no(), level)
                    .orElseThrow();
            String caution =
                    stop.leaf().section(Kind.CAUTION).orElseThrow().text().plain();
            String say = stop.leaf().section(Kind.SAY_IT).orElseThrow().text().plain();
            assertThat(text)
                    .as(level + ", stop " + stop.station().no())
                    .contains(firstLetters(line.say().plain()))
                    .contains(firstLetters(line.helper().plain()))
                    .contains(firstLetters(say));
            assertThat(text.replace(" ", "")).contains(letters(caution).replace(" ", ""));
        }
    }

    /** Up to the first blank, whose line has words of its own. */
    private static String firstLetters(String words) {
        return letters(words.replaceAll("\\{.*", ""));
    }

    @ParameterizedTest
    @CsvSource({"PRIMARY, ORDINARY", "JUNIOR, ORDINARY", "SENIOR, EASY", "INTERMEDIATE, LARGE"})
    void everyPageSaysThatFeetDownMayAlwaysBeSaid(Level level, Setting setting) {
        Map<Integer, String> pages = PdfWords.of(talkThrough(level, setting)).stream()
                .collect(Collectors.groupingBy(
                        Word::page, TreeMap::new, Collectors.mapping(Word::text, Collectors.joining(" "))));
        assertThat(pages.values())
                .allSatisfy(
                        page -> assertThat(page).contains("Feet down, please").contains("It costs nothing"));
    }

    /** Which help is allowed is the show's to say. */
    @ParameterizedTest
    @EnumSource(Level.class)
    void theSheetDefersToTheRuleBookAndTheSuperintendent(Level level) {
        assertThat(painted(talkThrough(level, Setting.ORDINARY)))
                .containsPattern("rule book|book of rules")
                .contains("ask")
                .contains("superintendent before the day");
    }

    /** Primary members never turn a rabbit over, nor have it turned: README, cautions. */
    @Test
    void primaryNeverHasTheRabbitTurnedOver() {
        String text = painted(talkThrough(Level.PRIMARY, Setting.ORDINARY));
        assertThat(text)
                .contains("Never turn the rabbit over")
                .doesNotContain("5 Turn over")
                .doesNotContain("on its back");
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void theCueCardIsOnePageWithEveryStopInOrderDownEachSide(Level level) {
        Edition edition = RealTree.edition(level);
        List<Word> words = PdfWords.of(cueCard(level, Setting.ORDINARY));
        List<Word> numbers = words.stream()
                .filter(word -> word.size() >= 30 && word.text().matches("\\d+"))
                .toList();
        List<String> expected =
                edition.order().stops().stream().map(String::valueOf).toList();

        assertThat(words).allMatch(word -> word.page() == 1);
        assertThat(numbers.stream().map(Word::text))
                .as("as a reading program meets them")
                .isEqualTo(expected);
        assertThat(numbers.stream()
                        .sorted(Comparator.comparing((Word word) -> word.x() > LETTER_WIDTH / 2)
                                .thenComparing(Word::y))
                        .map(Word::text))
                .as("down the left side, then down the right")
                .isEqualTo(expected);
        String text = joined(words);
        edition.order()
                .stops()
                .forEach(stop -> assertThat(text)
                        .contains(edition.library()
                                .contest()
                                .help()
                                .line(stop, level)
                                .orElseThrow()
                                .key()));
        assertThat(text).contains("Feet down, please.");
    }

    /** 18 pt is large print: American Printing House for the Blind, guidelines for print document design (Kitchel). */
    @ParameterizedTest
    @EnumSource(Level.class)
    void theCueCardIsLargePrintAtEveryLevel(Level level) {
        assertThat(PdfWords.of(cueCard(level, Setting.ORDINARY)))
                .isNotEmpty()
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThanOrEqualTo(18));
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void noWordOfTheCueCardCrossesTheFoldOrTheEdge(Level level) {
        for (Setting setting : Setting.values()) {
            assertThat(PdfWords.of(cueCard(level, setting))).allSatisfy(word -> {
                assertThat(word.x()).as(word.toString()).isGreaterThanOrEqualTo(BLANK_EDGE);
                assertThat(word.x() + word.width()).as(word.toString()).isLessThanOrEqualTo(LETTER_WIDTH - BLANK_EDGE);
                assertThat(word.x() < LETTER_WIDTH / 2 && word.x() + word.width() > LETTER_WIDTH / 2 - 2)
                        .as(setting + ": " + word + " on the fold")
                        .isFalse();
                assertThat(word.y()).as(word.toString()).isBetween(BLANK_EDGE, LETTER_HEIGHT - BLANK_EDGE);
            });
        }
    }

    /** A line of a stop never touches the rule of the next: what is set stays in its own stretch. */
    @ParameterizedTest
    @EnumSource(Level.class)
    void noStopOfTheCueCardRunsIntoTheNext(Level level) {
        for (Setting setting : Setting.values()) {
            List<Word> words = PdfWords.of(cueCard(level, setting));
            List<Word> numbers = words.stream()
                    .filter(word -> word.size() >= 30 && word.text().matches("\\d+"))
                    .toList();
            int rows = (numbers.size() + 1) / 2;
            double pitch = numbers.get(1).y() - numbers.get(0).y();
            double top = numbers.get(0).y() - numbers.get(0).size() * 25.4 / 72;
            for (Word word : words) {
                double inRow = (word.y() - top) % pitch;
                assertThat(word.y() < top || word.y() > top + rows * pitch + 1 || inRow < pitch - 1.5 || inRow > 0)
                        .as(word.toString())
                        .isTrue();
                assertThat(word.y()).as(setting + " " + word).isLessThanOrEqualTo(top + rows * pitch);
            }
        }
    }

    /** Large print, as above; headings 22 and subheads 20: American Council of the Blind, 2022. */
    @ParameterizedTest
    @EnumSource(Level.class)
    void noLetterOfTheLargeTalkThroughSheetIsUnderEighteenPoints(Level level) {
        List<Word> words = PdfWords.of(talkThrough(level, Setting.LARGE));
        assertThat(words)
                .hasSizeGreaterThan(400)
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThanOrEqualTo(18));
        assertThat(words).anyMatch(word -> word.text().equals("Talk-through") && word.size() >= 22);
        assertThat(words).anyMatch(word -> word.text().equals("Introduction") && word.size() >= 20);
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void nothingOfTheTalkThroughSheetLeavesThePrintableArea(Setting setting) {
        for (Level level : List.of(Level.PRIMARY, Level.SENIOR)) {
            assertThat(PdfWords.of(talkThrough(level, setting))).allSatisfy(word -> {
                assertThat(word.x()).as(word.toString()).isGreaterThanOrEqualTo(BLANK_EDGE);
                assertThat(word.x() + word.width()).as(word.toString()).isLessThanOrEqualTo(LETTER_WIDTH - BLANK_EDGE);
                assertThat(word.y()).as(word.toString()).isBetween(BLANK_EDGE, LETTER_HEIGHT - BLANK_EDGE);
            });
        }
    }

    /** PDF/UA-1 (ISO 14289-1:2014), by veraPDF. */
    @ParameterizedTest
    @CsvSource({"PRIMARY, ORDINARY", "JUNIOR, LARGE", "SENIOR, EASY"})
    void everyoneCanReadThem(Level level, Setting setting) {
        assertThat(PdfUa.violations(talkThrough(level, setting))).isEmpty();
        assertThat(PdfUa.violations(cueCard(level, setting))).isEmpty();
    }
}
