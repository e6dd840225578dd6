package hutchleaf.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand: box b at sessions that 2^(b-1) divides, each later box strictly later. */
final class DoublingBoxTest {
    @ParameterizedTest
    @CsvSource({
        "1, 1 2 4 8 16",
        "2, 2 4 8 16 32",
        "3, 3 4 8 16 32",
        "4, 4 6 8 16 32",
        "5, 5 6 8 16 32",
        "6, 6 8 12 16 32",
        "7, 7 8 12 16 32",
        "8, 8 10 12 16 32"
    })
    void aCardThatIsAlwaysKnownIsSeenAsWorked(int first, String sessions) {
        assertThat(DoublingBox.sessions(first))
                .isEqualTo(
                        Arrays.stream(sessions.split(" ")).map(Integer::valueOf).toList());
    }

    @Test
    void theTableNamesTheBoxesOfSixteenSessions() {
        List<String> boxes = List.of(
                "1",
                "1 2",
                "1",
                "1 2 3",
                "1",
                "1 2",
                "1",
                "1 2 3 4",
                "1",
                "1 2",
                "1",
                "1 2 3",
                "1",
                "1 2",
                "1",
                "1 2 3 4 5");
        assertThat(DoublingBox.table()).hasSize(16);
        for (DoublingBox.Row row : DoublingBox.table()) {
            assertThat(row.boxes().stream().map(String::valueOf).toList())
                    .as("session " + row.session())
                    .isEqualTo(List.of(boxes.get(row.session() - 1).split(" ")));
        }
    }

    @Test
    void theTableAndTheCardAgree() {
        for (int first = 1; first <= 40; first++) {
            List<Integer> sessions = DoublingBox.sessions(first);
            for (int box = 1; box <= DoublingBox.BOXES; box++) {
                assertThat(DoublingBox.boxesIn(sessions.get(box - 1)))
                        .as("first seen in session " + first)
                        .contains(box);
            }
            assertThat(sessions).isSorted().doesNotHaveDuplicates();
        }
    }

    @Test
    void sessionsAreCountedFromOne() {
        assertThatThrownBy(() -> DoublingBox.sessions(0)).hasMessage("session 0");
        assertThatThrownBy(() -> DoublingBox.boxesIn(0)).hasMessage("session 0");
    }
}
