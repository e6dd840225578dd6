package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A point is 1/72 inch (ISO 32000-1, 8.3.2.3) and an inch 25.4 mm (international inch, exact). */
final class LengthTest {
    @Test
    void anInchIsSeventyTwoPointsAndTwentyFivePointFourMillimetres() {
        assertThat(Length.inches(1).points()).isEqualTo(72);
        assertThat(Length.inches(1).mm()).isCloseTo(25.4, within(1e-12));
        assertThat(Length.mm(25.4).points()).isCloseTo(72, within(1e-12));
    }

    @Test
    void lengthsAddSubtractAndScale() {
        Length five = Length.mm(2).plus(Length.mm(3));
        assertThat(five.mm()).isCloseTo(5, within(1e-12));
        assertThat(five.minus(Length.mm(1)).mm()).isCloseTo(4, within(1e-12));
        assertThat(five.times(0.5).mm()).isCloseTo(2.5, within(1e-12));
        assertThat(five).isGreaterThan(Length.mm(4.9)).isLessThan(Length.mm(5.1));
    }

    @Test
    void twoLengthsMeetWithinFiveHundredthsOfAMillimetre() {
        assertThat(Length.mm(10).about(Length.mm(10.049))).isTrue();
        assertThat(Length.mm(10).about(Length.mm(10.051))).isFalse();
        assertThat(Length.mm(10).about(Length.mm(9.949))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"63.5, 63.5mm", "0, 0mm", "7, 7mm", "100, 100mm", "12.9, 12.9mm", "0.0004, 0mm", "1.0006, 1.001mm"})
    void cssWritesMillimetresToThreePlacesWithoutTrailingNoughts(double mm, String css) {
        assertThat(Length.mm(mm).css()).isEqualTo(css);
    }

    @Test
    void cssOfALittleLessThanNothingIsNothing() {
        assertThat(Length.mm(-0.0001).css()).isEqualTo("0mm");
    }
}
