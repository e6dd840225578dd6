package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.contest.QuestionSets;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Setting;
import hutchleaf.press.PdfFonts;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sheets to write on and the judge's paper in large print and in easy read, measured in the finished files. */
final class FormSettingTest {
    private static final double LETTER_WIDTH = 215.9;
    private static final double LETTER_HEIGHT = 279.4;

    /** Home printers leave the edge blank; common practice, no source. */
    private static final double BLANK_EDGE = 7;

    /** What a level gets to write on. */
    record Form(String name, Level level) {
        byte[] in(Setting setting) {
            Problems problems = new Problems();
            Edition edition = RealTree.edition(level);
            Function<Publications, Optional<Manuscript>> form = set -> switch (name) {
                case "figures to label" -> set.labelIt(edition, problems);
                case "practice sheets" -> set.packets().sheets(edition, setting, 0, problems);
                case "score sheet" -> set.scoreSheet(edition, "A Club", problems);
                case "slip" -> set.wentWell(edition, "A Club", problems);
                default -> set.questions(edition, QuestionSets.draw(edition, 1, 1, problems), Map.of(), problems);
            };
            Printed printed = RealTree.in(setting, name, level, Paper.LETTER, form);
            return RealTree.bytes(printed);
        }
    }

    static Stream<Form> forms() {
        return Stream.of(
                new Form("figures to label", Level.JUNIOR),
                new Form("practice sheets", Level.PRIMARY),
                new Form("practice sheets", Level.SENIOR),
                new Form("score sheet", Level.JUNIOR),
                new Form("slip", Level.PRIMARY),
                new Form("questions", Level.SENIOR));
    }

    /** 18 pt is large print: American Printing House for the Blind, guidelines for print document design (Kitchel). */
    @ParameterizedTest
    @MethodSource("forms")
    void noLetterOfLargePrintIsUnderEighteenPoints(Form form) {
        assertThat(PdfWords.of(form.in(Setting.LARGE)))
                .hasSizeGreaterThan(40)
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThanOrEqualTo(18));
    }

    /** No italics: British Dyslexia Association style guide, from memory. */
    @ParameterizedTest
    @MethodSource("forms")
    void easyReadHasNoItalics(Form form) throws IOException {
        assertThat(PdfFonts.of(form.in(Setting.EASY)))
                .isNotEmpty()
                .noneMatch(font -> font.contains("Italic") || font.contains("Oblique"));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void nothingLeavesThePrintableArea(Form form) {
        for (Setting setting : List.of(Setting.LARGE, Setting.EASY)) {
            assertThat(PdfWords.of(form.in(setting))).allSatisfy(word -> {
                assertThat(word.x()).as(setting + " " + word).isGreaterThanOrEqualTo(BLANK_EDGE);
                assertThat(word.x() + word.width())
                        .as(setting + " " + word)
                        .isLessThanOrEqualTo(LETTER_WIDTH - BLANK_EDGE);
                assertThat(word.y()).as(setting + " " + word).isBetween(BLANK_EDGE, LETTER_HEIGHT - BLANK_EDGE);
            });
        }
    }

    /** PDF/UA-1 (ISO 14289-1:2014), by veraPDF. */
    @ParameterizedTest
    @MethodSource("forms")
    void everyoneCanReadIt(Form form) {
        for (Setting setting : List.of(Setting.LARGE, Setting.EASY)) {
            assertThat(PdfUa.violations(form.in(setting)))
                    .as(form + " " + setting)
                    .isEmpty();
        }
    }

    /** The large score sheet asks for the same as the ordinary one: stops, blocks and points from contest/scoresheet.md. */
    @Test
    void theLargeScoreSheetHasEveryStopAndEveryPoint() {
        Edition edition = RealTree.edition(Level.JUNIOR);
        String text = PdfWords.of(new Form("score sheet", Level.JUNIOR).in(Setting.LARGE)).stream()
                .map(Word::text)
                .collect(Collectors.joining(" "))
                .replaceAll("[\\s\u00A0]+", " ");
        edition.library()
                .contest()
                .sheetFor(Level.JUNIOR)
                .orElseThrow()
                .blocks()
                .forEach(block -> {
                    assertThat(text)
                            .contains(
                                    block.letter() + " " + block.name(), "of " + block.hands(), "of " + block.voice());
                    block.stops()
                            .forEach(stop -> assertThat(text)
                                    .contains(stop + " "
                                            + edition.library()
                                                    .routine()
                                                    .station(stop)
                                                    .name()));
                });
        assertThat(text).contains("It costs nothing").contains("= Total");
    }
}
