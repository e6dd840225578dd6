package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines break where Unicode Standard Annex 14 lets them; each example is worked by hand from its rules. */
final class LineBreaksTest {
    /** LB19 (quotation marks), LB25 (numbers), LB13, LB18 (spaces), LB21 (hyphens). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            the rabbit\u2019s ear | the _rabbit\u2019s _ear
            Champagne d\u2019Argent | Champagne _d\u2019Argent
            at 104 \u00B0F or | at _104 _\u00B0F _or
            5/8 of a mile | 5/8 _of _a _mile
            head, then tail. | head, _then _tail.
            a flat-footed one | a _flat-_footed _one
            """)
    void aLineBreaksBetweenWordsOnly(String text, String broken) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
            parts.add(text.substring(from, to));
            from = to;
        }
        assertThat(String.join("_", parts)).isEqualTo(broken);
    }
}
