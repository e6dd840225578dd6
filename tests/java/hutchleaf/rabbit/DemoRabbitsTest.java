package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.rabbit.Findings.Line;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The fifteen rabbits of the demo club against a table made by hand from the breed table, the colour table and the
 * calendar, for the show of 8 August 2026. A question mark stands for what the member has to look up.
 */
final class DemoRabbitsTest {
    private static final Path TABLE = Path.of("tests/resources/demo-rabbits.csv");
    private static final String TO_CHECK = "?";

    /** A row of the table: what is expected at each point. */
    record Expected(String rabbit, Level level, Map<Point, String> words) {
        @Override
        public String toString() {
            return rabbit;
        }

        Findings findings() {
            return RabbitEngine.of(Samples.demo(rabbit), Samples.SHOW, level);
        }

        Optional<String> known(Point point) {
            return Optional.ofNullable(words.get(point)).filter(found -> !found.equals(TO_CHECK));
        }
    }

    static Stream<Expected> table() throws IOException {
        List<List<String>> rows = Files.readAllLines(TABLE).stream()
                .map(line -> List.of(line.split("\\|", -1)))
                .toList();
        return rows.stream().skip(1).map(row -> expected(rows.get(0), row));
    }

    private static Expected expected(List<String> head, List<String> row) {
        Map<Point, String> words = new EnumMap<>(Point.class);
        for (Point point : Point.values()) {
            words.put(point, row.get(head.indexOf(point.label())));
        }
        return new Expected(row.get(0), Level.of(row.get(1)).orElseThrow(), words);
    }

    @Test
    void theTableHoldsEveryRabbitOfTheDemoClub() throws IOException {
        assertThat(table().map(Expected::rabbit))
                .containsExactlyElementsOf(
                        DemoRoster.rabbits().stream().map(Rabbit::name).toList());
    }

    @ParameterizedTest
    @MethodSource("table")
    void everyPointIsTheOneOfTheTable(Expected expected) {
        Findings findings = expected.findings();
        for (Point point : Point.values()) {
            assertThat(findings.words(point))
                    .as(expected + ", " + point.label())
                    .isEqualTo(expected.known(point));
        }
    }

    @ParameterizedTest
    @MethodSource("table")
    void everyBlankIsFilledFromTheTableOrLeftToWriteOn(Expected expected) {
        Findings findings = expected.findings();

        assertThat(findings.filling("rabbit.name")).contains(expected.rabbit());
        assertThat(findings.filling("rabbit.colour")).isEqualTo(expected.known(Point.VARIETY));
        for (Point point : Point.values()) {
            assertThat(findings.filling(point.blank())).as(point.blank()).isEqualTo(expected.known(point));
        }
        assertThat(List.of("member.name", "club.name", "fact.teeth", "rabbit.tail"))
                .allSatisfy(blank -> assertThat(findings.filling(blank)).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("table")
    void everyLineHasWordsToSayInTheOrderOfTheRoutine(Expected expected) {
        List<Line> lines = expected.findings().lines();

        assertThat(lines)
                .hasSize(expected.level() == Level.PRIMARY ? 10 : expected.level() == Level.JUNIOR ? 15 : 18)
                .isSortedAccordingTo((one, other) -> Integer.compare(one.stop(), other.stop()))
                .allSatisfy(line -> assertThat(line.say())
                        .as(line.point().label())
                        .isNotBlank()
                        .satisfies(say -> assertThat(say.contains("…"))
                                .isEqualTo(expected.known(line.point()).isEmpty())));
    }
}
