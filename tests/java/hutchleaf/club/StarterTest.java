package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The folder that a new club starts from teaches every key and every column. */
final class StarterTest {
    private static final Path STARTER = Path.of("src/main/resources/new-club");

    @Test
    void everyKeyStandsInIt() throws IOException {
        assertThat(Files.readString(STARTER.resolve("club.md"))
                        .lines()
                        .filter(line -> line.matches("(# )?[a-z]+(-[a-z]+)*: .*"))
                        .map(line -> line.replaceFirst("^# ", "").replaceFirst(":.*", "")))
                .containsExactlyInAnyOrderElementsOf(ClubFile.KEYS);
    }

    @Test
    void everyColumnHasANote() throws IOException {
        String text = Files.readString(STARTER.resolve("members.csv"));
        assertThat(Column.words()).allSatisfy(column -> assertThat(text).contains(column));
        String head = text.lines()
                .filter(line -> line.startsWith("member_name,"))
                .findFirst()
                .orElseThrow();
        assertThat(head.split(",")).allSatisfy(column -> assertThat(text).contains("# " + column + ":"));
    }
}
