package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a leader writes down is read, or refused with the way to mend it. */
final class PrinterNumbersTest {
    private static final Place AT = Place.whole("--printer");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "99.2, 99.5, 0.5, -1.0 | 99.2 | 99.5 | 0.5 | -1",
                "99.2,99.5,0.5,-1.0 | 99.2 | 99.5 | 0.5 | -1",
                "100, 100, +0.5, \u22121 | 100 | 100 | 0.5 | -1",
                "95, 105, -10, 10 | 95 | 105 | -10 | 10"
            })
    void fourNumbersAreRead(String text, double scaleX, double scaleY, double offsetX, double offsetY) {
        Problems problems = new Problems();
        assertThat(PrinterNumbers.read(text, text, AT, problems))
                .contains(new Correction(scaleX, scaleY, Length.mm(offsetX), Length.mm(offsetY)));
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "99.2", "99,2,99,5,0,5,-1", "99.2 99.5 0 0", "99.2, 99.5, 0.5, left", "100, 100, 0, 0, 0"})
    void anythingElseIsRefusedInOneLine(String text) {
        assertThat(refusals(text))
                .containsExactly("--printer: cannot read '" + text + "'; write four numbers: scale-x, scale-y in"
                        + " per cent, offset-x, offset-y in mm, as in 99.2, 99.5, 0.5, -1");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "94.9, 100, 0, 0 | scale-x 94.9, not 95 to 105",
                "100, 150, 0, 0 | scale-y 150, not 95 to 105",
                "100, 100, 10.1, 0 | offset-x 10.1, not -10 to 10",
                "100, 100, 0, -11 | offset-y -11, not -10 to 10"
            })
    void aNumberOutOfRangeIsNamed(String text, String what) {
        assertThat(refusals(text))
                .containsExactly("--printer: '" + text + "' has " + what
                        + "; print the sheet of 'hutchleaf ruler' at 100 % and measure again");
    }

    private static List<String> refusals(String text) {
        Problems problems = new Problems();
        assertThat(PrinterNumbers.read(text, text, AT, problems)).isEmpty();
        return problems.sorted().stream().map(Problem::toString).toList();
    }
}
