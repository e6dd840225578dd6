package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two pages that face each other: which stops get them. A dot is a stop that one page holds, a T one that is too long. */
final class LeanSpreadsTest {
    /** By hand, the first stop on a left page. */
    @ParameterizedTest
    @CsvSource({"..., ...", "T., T.", ".T, TT", "..T, ..T", ".T.T, TTTT", "..T.., ..T..", "T.T, TTT"})
    void aLongStopStartsAtTheLeft(String tooLong, String two) {
        assertThat(words(LeanSpreads.of(flags(tooLong)))).isEqualTo(two);
    }

    @RepeatedTest(50)
    void noLongStopIsTornAndNoPageStaysEmpty(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        List<Boolean> tooLong =
                IntStream.range(0, 16).mapToObj(stop -> random.nextInt(3) == 0).toList();
        List<Boolean> two = LeanSpreads.of(tooLong);
        int page = 2;
        for (int stop = 0; stop < tooLong.size(); stop++) {
            if (tooLong.get(stop)) {
                assertThat(two.get(stop))
                        .as("stop %d of %s", stop, words(tooLong))
                        .isTrue();
            }
            if (two.get(stop)) {
                assertThat(page % 2)
                        .as("stop %d of %s starts at the left", stop, words(tooLong))
                        .isZero();
            }
            page += two.get(stop) ? 2 : 1;
        }
    }

    private static List<Boolean> flags(String stops) {
        return stops.chars().mapToObj(stop -> stop == 'T').toList();
    }

    private static String words(List<Boolean> stops) {
        return stops.stream().map(two -> two ? "T" : ".").collect(Collectors.joining());
    }
}
