package hutchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.HelpWords;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Order;
import hutchleaf.model.Routine;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code contest/accommodation.md}: what is read from it, and every mistake with its line. */
final class HelpReaderTest {
    private static final String START = """
            ---
            title: Help
            ---

            ## For you
            - Say it.

            ## At each stop
            | stop | say to your helper | your helper does | look for | key words |
            |---|---|---|---|---|
            """;
    private static final String ONE = "| 1 | Now walk. | Carries. | Is it calm? | rump held |\n";
    private static final String FOUR = "| 4 | Count {fact.hind nails}. | Waits. | Is it whole? | ears |\n";
    private static final Routine ROUTINE =
            new Routine(List.of(), List.of(new Order("short", List.of(1, 4), Levels.ALL, "always")));

    private final Problems problems = new Problems();

    private HelpWords read(String text) {
        Place at = Place.whole("help.md");
        return HelpReader.read(MarkdownFile.read(at, "contest/help.md", text, problems), ROUTINE, problems);
    }

    private List<String> told() {
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    @Test
    void everyStopHasItsLine() {
        HelpWords words = read(START + ONE + FOUR);
        assertThat(told()).isEmpty();
        assertThat(words.line(4, Level.SENIOR).orElseThrow().say().plain()).isEqualTo("Count {fact.hind nails}.");
        assertThat(words.line(4, Level.SENIOR).orElseThrow().key()).isEqualTo("ears");
        assertThat(words.list(HelpWords.Heading.MEMBER, Level.JUNIOR)).hasSize(1);
    }

    @Test
    void aStopWithoutALineIsToldForEachLevel() {
        read(START.replace("At each stop", "At each stop (from junior)") + ONE + FOUR);
        assertThat(told())
                .containsExactly(
                        "help.md: stop 1 has no line for primary; add one under 'At each stop'",
                        "help.md: stop 4 has no line for primary; add one under 'At each stop'");
    }

    @Test
    void anEmptyCellAndAStopThatStandsTwiceAreToldWithTheirLines() {
        read(START + ONE + FOUR + FOUR.replace("| ears |", "|  |"));
        assertThat(told())
                .containsExactlyInAnyOrder(
                        "help.md:13: stop 4 stands twice; keep one row",
                        "help.md:13: no 'key words' in this row; fill the cell");
    }

    @Test
    void aHeadingThatIsNotKnownIsTold() {
        read(START.replace("For you", "For yuo") + ONE + FOUR);
        assertThat(told()).containsExactly("help.md:5: unknown heading 'For yuo'; did you mean 'For you'?");
    }
}
