package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand. */
final class InkUseTest {
    @Test
    void pagesAddUp() {
        InkUse use = InkUse.of(List.of(0.03, 0.09)).plus(InkUse.of(List.of(0.06)));
        assertThat(use.pages()).isEqualTo(3);
        assertThat(use.mean()).isCloseTo(0.06, within(1e-9));
        assertThat(use.highest()).isEqualTo(0.09);
    }

    /** A cartridge rated for 1,000 pages at 5 % lasts for 500 pages at 10 %: ISO/IEC 19752 rates by such pages, from memory. */
    @Test
    void fiveHundredPagesAtTenInAHundredEmptyACartridgeOfAThousandAtFive() {
        assertThat(new InkUse(500, 50, 0.1).ratedPages()).isCloseTo(1000, within(1e-9));
    }

    @Test
    void noPagesTakeNothing() {
        assertThat(InkUse.of(List.of())).isEqualTo(InkUse.NONE);
        assertThat(InkUse.NONE.mean()).isZero();
        assertThat(InkUse.NONE.ratedPages()).isZero();
    }

    @Test
    void moreInkThanPaperIsABug() {
        assertThatThrownBy(() -> new InkUse(1, 1.5, 1)).hasMessage("1 pages, 1.5 black, at most 1.0");
        assertThatThrownBy(() -> new InkUse(1, Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
