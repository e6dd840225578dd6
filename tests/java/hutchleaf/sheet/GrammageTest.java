package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Basis weight is pounds for 500 sheets of the basic size; basic sizes and the 147 g/m² of 67 lb bristol as paper
 * merchants' tables print them, the other figures worked out from the definition and the pound of 453.59237 g.
 */
final class GrammageTest {
    @ParameterizedTest
    @CsvSource({"20,BOND,75.19", "24,BOND,90.23", "67,BRISTOL,146.92", "65,COVER,175.77", "110,INDEX,198.88"})
    void aBasisWeightIsAGrammage(double pounds, BasicSize size, double gsm) {
        assertThat(Grammage.ofPounds(pounds, size).gsm()).isCloseTo(gsm, within(0.005));
    }

    @Test
    void bristolOfSixtySevenPoundsIsSoldAsHundredAndFortySeven() {
        assertThat(Math.round(Grammage.ofPounds(67, BasicSize.BRISTOL).gsm())).isEqualTo(147);
    }

    /** A bond sheet is four letter sheets, so a ream of 20 lb letter paper weighs 5 lb: by definition. */
    @Test
    void aReamOfTwentyPoundLetterPaperWeighsFivePounds() {
        double grams = Grammage.ofPounds(20, BasicSize.BOND).grams(Paper.LETTER, 500);
        assertThat(grams / Grammage.GRAMS_A_POUND).isCloseTo(5, within(1e-9));
        assertThat(new Grammage(75.2).grams(Paper.LETTER, 500) / Grammage.GRAMS_A_POUND)
                .isCloseTo(5.0004, within(0.00005));
    }

    /** ISO 216 gives the size of A4: 210 by 297 mm, 0.06237 square metres. */
    @Test
    void aSheetOfEightyGramA4WeighsFiveGrams() {
        Grammage eighty = new Grammage(80);
        assertThat(eighty.grams(Paper.A4, 1)).isCloseTo(4.9896, within(1e-9));
        assertThat(eighty.grams(Paper.A4, 500)).isCloseTo(2494.8, within(1e-6));
        assertThat(eighty.grams(Paper.A4, 456)).isCloseTo(2275, within(0.5));
    }

    @Test
    void stocksAreWhatIsSoldWhereThePaperIs() {
        assertThat(Stock.PLAIN.grammage(Paper.A4).gsm()).isEqualTo(80);
        assertThat(Stock.PLAIN.grammage(Paper.LETTER).gsm()).isCloseTo(75.19, within(0.005));
        assertThat(Stock.CARD.grammage(Paper.A4).gsm()).isEqualTo(160);
        assertThat(Stock.CARD.grammage(Paper.LETTER).gsm()).isCloseTo(175.77, within(0.005));
    }
}
