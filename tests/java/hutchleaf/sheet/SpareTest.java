package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SpareTest {
    /** Worked by hand: a tenth of 14 is 1.4, and four tenths of a sheet cannot be printed. */
    @ParameterizedTest
    @CsvSource({"10%, 14, 2", "10%, 10, 1", "10%, 11, 2", "10%, 1, 1", "10%, 0, 0", "0%, 14, 0", "100%, 7, 7"})
    void aShareCountsThePartOfASheetWhole(String words, int sheets, int spare) {
        assertThat(Spare.read(words).orElseThrow().of(sheets)).isEqualTo(spare);
    }

    @ParameterizedTest
    @CsvSource({"2, 14, 2", "0, 14, 0", "' 10 % ', 14, 2", "3, 1, 3"})
    void aNumberIsThatManyHoweverManyAreNeeded(String words, int sheets, int spare) {
        assertThat(Spare.read(words).orElseThrow().of(sheets)).isEqualTo(spare);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "%", "ten", "10 percent", "-1", "101", "101%", "1.5%"})
    void anythingElseIsNoSpare(String words) {
        assertThat(Spare.read(words)).isEmpty();
    }
}
