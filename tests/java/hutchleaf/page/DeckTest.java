package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.sheet.Box;
import hutchleaf.sheet.CardSheet;
import hutchleaf.sheet.Paper;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The decks of the project's own tree, read back from the finished PDFs. */
final class DeckTest {
    /** Where a card's code starts on its face: 4 mm in. Only codes are set in 14 pt bold with this form. */
    private static final double CODE = 4;

    @ParameterizedTest
    @CsvSource({"PRIMARY, LETTER", "PRIMARY, A4", "JUNIOR, LETTER", "JUNIOR, A4", "SENIOR, LETTER"})
    void everyBackLandsBehindItsFrontAndNothingIsCutOff(Level level, Paper paper) {
        byte[] pdf = RealTree.bytes(RealTree.deck(level, paper));
        CardSheet sheet = level == Level.PRIMARY ? CardSheet.primary(paper) : CardSheet.standard(paper);
        List<Card> deck = RealTree.edition(level).deck();
        List<Word> words = PdfWords.of(pdf);
        for (int index = 0; index < deck.size(); index++) {
            int place = index % sheet.cards();
            int page = 2 + index / sheet.cards();
            String code = deck.get(index).code().toString();
            Word front = code(words, code, page, sheet.front(place));
            Word back = code(words, code, page, sheet.back(place));
            double fold = paper.height().mm() / 2;
            double behind = 2 * fold - (front.x() - CODE) - sheet.cardWidth().mm();
            assertThat(back.x() - CODE)
                    .as("left edge of the back of card %s", code)
                    .isCloseTo(behind, within(0.05));
            assertThat(back.y()).as("height of the back of card %s", code).isCloseTo(front.y(), within(0.05));
            staysInside(words, page, sheet.front(place));
            staysInside(words, page, sheet.back(place));
        }
        assertThat(words.stream().mapToInt(Word::page).max().orElse(0)).isEqualTo(1 + sheet.sheets(deck.size()));
    }

    private static Word code(List<Word> words, String code, int page, Box face) {
        List<Word> found = words.stream()
                .filter(word -> word.page() == page && word.text().equals(code) && on(word, face) && word.size() > 13.9)
                .toList();
        assertThat(found).as("card %s on page %d", code, page).hasSize(1);
        return found.get(0);
    }

    private static boolean on(Word word, Box face) {
        return word.x() > face.x().mm()
                && word.x() < face.right().mm()
                && word.y() > face.y().mm()
                && word.y() < face.bottom().mm();
    }

    /** 3 mm inside every cut: home cutting wanders (source: a die-line handbook, cutter movement up to 3 mm in all). */
    private static void staysInside(List<Word> words, int page, Box face) {
        double safe = CardSheet.SAFE.mm() - 0.05;
        words.stream().filter(word -> word.page() == page && on(word, face)).forEach(word -> {
            assertThat(word.x()).as(word.toString()).isGreaterThan(face.x().mm() + safe);
            assertThat(word.x() + word.width())
                    .as(word.toString())
                    .isLessThan(face.right().mm() - safe);
            assertThat(word.y()).as(word.toString()).isLessThan(face.bottom().mm() - safe);
            assertThat(word.size()).as(word.toString()).isGreaterThan(9.45);
        });
    }

    @ParameterizedTest
    @EnumSource(
            value = Level.class,
            names = {"PRIMARY", "JUNIOR"})
    void aDeckIsPdfUa(Level level) {
        assertThat(PdfUa.violations(RealTree.bytes(RealTree.deck(level, Paper.LETTER))))
                .isEmpty();
    }
}
