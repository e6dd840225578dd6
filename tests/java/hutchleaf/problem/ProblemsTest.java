package hutchleaf.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

final class ProblemsTest {
    private final Problems problems = new Problems();

    @Test
    void theyAreSortedByFileThenByLineAsANumberAndShownOnce() {
        problems.add(new Place("content/b.md", 2), "second", "mend it");
        problems.add(new Place("content/a.md", 10), "tenth", "mend it");
        problems.add(new Place("content/a.md", 9), "ninth", "mend it");
        problems.warn(Place.whole("content/a.md"), "odd", "look at it");
        problems.add(new Place("content/a.md", 9), "ninth", "mend it");
        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .containsExactly(
                        "warning: content/a.md: odd; look at it",
                        "content/a.md:9: ninth; mend it",
                        "content/a.md:10: tenth; mend it",
                        "content/b.md:2: second; mend it");
    }

    @Test
    void aWarningAloneStopsNothing() {
        assertThat(problems.isEmpty()).isTrue();
        problems.warn(Place.whole("content/a.md"), "odd", "look at it");
        assertThat(problems.isEmpty()).isFalse();
        assertThat(problems.hasErrors()).isFalse();
        Problems more = new Problems();
        more.add(Place.whole("content/a.md").atLine(3), "wrong", "mend it");
        problems.addAll(more);
        assertThat(problems.hasErrors()).isTrue();
    }

    @Test
    void aPlaceHasNoLineBelowNought() {
        assertThatThrownBy(() -> new Place("content/a.md", -1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("line -1 of content/a.md");
    }
}
