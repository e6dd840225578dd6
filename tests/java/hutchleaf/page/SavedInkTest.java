package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.model.Setting;
import hutchleaf.press.InkMeter;
import hutchleaf.press.PdfFonts;
import hutchleaf.press.PdfRaster;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.InkUse;
import hutchleaf.sheet.Paper;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Pages that save ink, held against the same pages as they are printed otherwise. */
final class SavedInkTest {
    /** 0.9 pt, which lives through two copies, less the rounding of the engine: mm. */
    private static final double THINNEST = 0.9 * 25.4 / 72 - 0.02;

    private static final Publications SAVING =
            new Publications(Templates.folder(Path.of("templates")).saving(Club.Saver.YES), Paper.LETTER, "en");

    private static final Printed GUIDE =
            RealTree.print(SAVING.guide(RealTree.edition(Level.PRIMARY), "A Club", new Problems()));
    private static final Printed SHEET =
            RealTree.print(SAVING.scoreSheet(RealTree.edition(Level.SENIOR), "A Club", new Problems()));

    @Test
    void noWordIsLeftOut() {
        assertThat(words(GUIDE)).isEqualTo(words(RealTree.guide(Level.PRIMARY, Paper.LETTER)));
        assertThat(PdfWords.of(RealTree.bytes(SHEET)))
                .extracting(Word::text)
                .isEqualTo(PdfWords.of(RealTree.bytes(RealTree.scoreSheet(Level.SENIOR, Paper.LETTER))).stream()
                        .map(Word::text)
                        .toList());
    }

    /** Each once: pages may break elsewhere, and a foot stands on every page. */
    private static Set<String> words(Printed printed) {
        return PdfWords.of(RealTree.bytes(printed)).stream()
                .flatMap(word -> Stream.of(word.text().split("[^\\p{L}]+", -1)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void lettersAreThinnerButForLargePrint() {
        assertThat(PdfFonts.of(RealTree.bytes(GUIDE))).contains("Lato-Light").doesNotContain("Lato-Bold");
        Printed large = RealTree.print(
                SAVING.in(Setting.LARGE).scoreSheet(RealTree.edition(Level.SENIOR), "A Club", new Problems()));
        assertThat(PdfFonts.of(RealTree.bytes(large)))
                .contains("Lato-Regular", "Lato-Bold")
                .doesNotContain("Lato-Light");
    }

    /** A coat that is black on the ordinary page is lines on white here: dark still, and neither of the two. */
    @Test
    void aBlackCoatBecomesLines() {
        Printed ordinary = RealTree.guide(Level.PRIMARY, Paper.LETTER);
        Word words = PdfWords.of(RealTree.bytes(ordinary), "Self:").get(0);
        Word saved = PdfWords.of(RealTree.bytes(GUIDE), "Self:").get(0);
        assertThat(coat(ordinary, words)).isGreaterThan(0.8);
        assertThat(coat(GUIDE, saved)).as("black of the coat").isBetween(0.1, 0.4);
    }

    /** The middle of the figure whose caption stands at its right and ends where it ends. */
    private static double coat(Printed printed, Word caption) {
        return PdfRaster.of(RealTree.bytes(printed), caption.page())
                .ink(caption.x() - 45, caption.y() - 18, caption.x() - 30, caption.y() - 8);
    }

    @Test
    void aQuarterOfTheInkIsSavedAndMore() {
        InkMeter meter = new InkMeter();
        assertThat(InkUse.of(meter.of(GUIDE)).mean())
                .isLessThan(0.75
                        * InkUse.of(meter.of(RealTree.guide(Level.PRIMARY, Paper.LETTER)))
                                .mean());
        assertThat(InkUse.of(meter.of(SHEET)).mean())
                .isLessThan(0.75
                        * InkUse.of(meter.of(RealTree.scoreSheet(Level.SENIOR, Paper.LETTER)))
                                .mean());
    }

    @Test
    void noRuleGetsTooThinToWriteOn() {
        assertThat(PdfInk.shapes(RealTree.bytes(SHEET), 1))
                .filteredOn(shape -> shape.flat() || shape.upright())
                .isNotEmpty()
                .allMatch(shape -> Math.min(shape.w(), shape.h()) >= THINNEST, "0.9 pt or more");
    }

    @Test
    void whatWasWhiteOnBlackIsBlackOnWhite() {
        Word caution = PdfWords.of(RealTree.bytes(GUIDE), "Caution").stream()
                .filter(word -> word.x() < 60)
                .findFirst()
                .orElseThrow();
        assertThat(around(RealTree.guide(Level.PRIMARY, Paper.LETTER), caution)).isGreaterThan(0.5);
        assertThat(around(GUIDE, caution)).isBetween(0.05, 0.4);
    }

    private static double around(Printed printed, Word word) {
        return PdfRaster.of(RealTree.bytes(printed), word.page())
                .ink(word.x(), word.y() - 3, word.x() + word.width(), word.y());
    }

    @Test
    void itIsPdfUa() {
        assertThat(PdfUa.violations(RealTree.bytes(SHEET))).isEmpty();
    }
}
