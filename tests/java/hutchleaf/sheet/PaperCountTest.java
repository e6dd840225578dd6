package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets counted by hand. */
final class PaperCountTest {
    @ParameterizedTest
    @CsvSource({"0,0", "1,1", "2,1", "3,2", "16,8"})
    void bothSidesTakeHalfTheSheetsAndNeverHalfASheet(int pages, int sheets) {
        assertThat(Sides.TWO.sheets(pages)).isEqualTo(sheets);
        assertThat(Sides.ONE.sheets(pages)).isEqualTo(pages);
    }

    /** Pages of a saddle-stitched booklet are a multiple of four (PNW BOCES booklet guide). */
    @ParameterizedTest
    @CsvSource({"0,0,0", "1,1,3", "4,1,0", "5,2,3", "8,2,0", "9,3,3", "16,4,0"})
    void aBookletHasFourPagesOnASheet(int pages, int sheets, int blanks) {
        assertThat(PaperCount.booklet(pages)).isEqualTo(sheets);
        assertThat(PaperCount.blankPages(pages)).isEqualTo(blanks);
    }

    @ParameterizedTest
    @CsvSource({"60,4,15,0", "61,4,16,3", "0,4,0,0", "24,6,4,0", "25,6,5,5"})
    void theLastSheetOfCardsMayHaveEmptyPlaces(int cards, int aSheet, int sheets, int empty) {
        assertThat(PaperCount.cards(cards, aSheet)).isEqualTo(sheets);
        assertThat(PaperCount.emptyPlaces(cards, aSheet)).isEqualTo(empty);
    }

    /** Each member a 16-page booklet (4 sheets) and 60 cards four to a sheet (15 sheets), 5 % spare. */
    @ParameterizedTest
    @CsvSource({"24,456,479,1", "26,494,519,2"})
    void aClubsPaperIsAsWorked(int members, int sheets, int withSpare, int reams) {
        int each = PaperCount.booklet(16) + PaperCount.cards(60, 4);
        assertThat(members * each).isEqualTo(sheets);
        assertThat(sheets + PaperCount.spare(sheets, 5)).isEqualTo(withSpare);
        assertThat(PaperCount.packs(withSpare, PaperCount.REAM)).isEqualTo(reams);
    }

    /** In floating point 100 times 1.05 is a little more than 105, and 140 times 1.1 a little more than 154. */
    @ParameterizedTest
    @CsvSource({"100,5,5", "101,1,2", "140,10,14", "0,5,0", "1,5,1", "456,0,0", "20,5,1", "21,5,2"})
    void spareSheetsAreCountedInWholeNumbers(int sheets, int percent, int spare) {
        assertThat(PaperCount.spare(sheets, percent)).isEqualTo(spare);
    }

    @Test
    void aCountBelowNothingIsABug() {
        assertThatThrownBy(() -> PaperCount.booklet(-1)).hasMessage("a count of -1");
        assertThatThrownBy(() -> PaperCount.cards(1, 0)).hasMessage("0 to a sheet or a pack");
    }
}
