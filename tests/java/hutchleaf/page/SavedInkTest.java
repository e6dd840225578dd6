package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.press.InkMeter;
import hutchleaf.press.PdfRaster;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.InkUse;
import hutchleaf.sheet.Paper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pages that save ink, held against the same pages as they are printed otherwise. */
final class SavedInkTest {
    /** The thinnest line of a score sheet, 1.1 pt, less the rounding of the engine: mm. */
    private static final double THINNEST = 1.1 * 25.4 / 72 - 0.02;

    private static final Publications SAVING =
            new Publications(Templates.folder(Path.of("templates")).saving(Club.Saver.YES), Paper.LETTER, "en");

    private static final Printed GUIDE =
            RealTree.print(SAVING.guide(RealTree.edition(Level.PRIMARY), "A Club", new Problems()));
    private static final Printed SHEET =
            RealTree.print(SAVING.scoreSheet(RealTree.edition(Level.SENIOR), "A Club", new Problems()));

    @Test
    void everyWordStandsWhereItStood() {
        assertSame(GUIDE, RealTree.guide(Level.PRIMARY, Paper.LETTER));
        assertSame(SHEET, RealTree.scoreSheet(Level.SENIOR, Paper.LETTER));
    }

    private static void assertSame(Printed saved, Printed ordinary) {
        List<Word> words = PdfWords.of(RealTree.bytes(saved));
        List<Word> others = PdfWords.of(RealTree.bytes(ordinary));
        assertThat(words).hasSameSizeAs(others);
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            Word other = others.get(i);
            assertThat(word.text() + word.page()).isEqualTo(other.text() + other.page());
            assertThat(Math.hypot(word.x() - other.x(), word.y() - other.y()))
                    .as("%s, before %s", word, other)
                    .isLessThan(0.1);
        }
    }

    @Test
    void aSixthOfTheInkIsSavedAndMore() {
        InkMeter meter = new InkMeter();
        assertThat(InkUse.of(meter.of(GUIDE)).mean())
                .isLessThan(5.0
                        / 6
                        * InkUse.of(meter.of(RealTree.guide(Level.PRIMARY, Paper.LETTER)))
                                .mean());
        assertThat(InkUse.of(meter.of(SHEET)).mean())
                .isLessThan(5.0
                        / 6
                        * InkUse.of(meter.of(RealTree.scoreSheet(Level.SENIOR, Paper.LETTER)))
                                .mean());
    }

    @Test
    void noRuleGetsTooThinToWriteOn() {
        assertThat(PdfInk.shapes(RealTree.bytes(SHEET), 1))
                .filteredOn(shape -> shape.flat() || shape.upright())
                .isNotEmpty()
                .allMatch(shape -> Math.min(shape.w(), shape.h()) >= THINNEST, "1.1 pt or more");
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
