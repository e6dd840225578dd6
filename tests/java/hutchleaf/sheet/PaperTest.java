package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PaperTest {
    /** A4 is 210 x 297 mm (ISO 216:2007, table 1); Letter is 8.5 x 11 inches (ANSI/ASME Y14.1, size A). */
    @ParameterizedTest
    @CsvSource({"A4, 595.276, 841.890", "LETTER, 612, 792"})
    void aPaperIsAsLargeAsItsStandardSays(Paper paper, double widthPoints, double heightPoints) {
        assertThat(paper.width().points()).isCloseTo(widthPoints, within(0.0005));
        assertThat(paper.height().points()).isCloseTo(heightPoints, within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({
        "ONE, 0, 0",
        "ONE, 1, 1",
        "ONE, 2, 2",
        "ONE, 7, 7",
        "TWO, 0, 0",
        "TWO, 1, 1",
        "TWO, 2, 1",
        "TWO, 3, 2",
        "TWO, 7, 4",
        "TWO, 8, 4"
    })
    void sheetsAreCountedByTheSidesThatArePrinted(Sides sides, int pages, int sheets) {
        assertThat(sides.sheets(pages)).isEqualTo(sheets);
    }
}
