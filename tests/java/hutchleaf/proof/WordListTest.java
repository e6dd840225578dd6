package hutchleaf.proof;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class WordListTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rabbit",
                "Rabbit",
                "rabbits",
                "rabbit's",
                "rabbits'",
                "rabbit\u2019s",
                "box",
                "boxes",
                "groom",
                "groomed",
                "grooming",
                "groomer",
                "bake",
                "bakes",
                "baked",
                "baking",
                "baker",
                "hop",
                "hopped",
                "hopping",
                "big",
                "bigger",
                "biggest",
                "carry",
                "carries",
                "carried",
                "carrying",
                "happy",
                "happier",
                "happiest",
                "do",
                "don't",
                "is",
                "isn't",
                "it",
                "it's",
                "it'll",
                "groom-box",
                "7",
                "3.5",
                "7-box"
            })
    void aListedWordStandsForItsRegularForms(String word) throws IOException {
        assertThat(list().holds(word)).as(word).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"hutch", "rabbitry", "boxful", "bak", "carr", "carri", "isle", "rabbit-proof", "groomless", "his"
            })
    void anotherWordIsNotHeld(String word) throws IOException {
        assertThat(list().holds(word)).as(word).isFalse();
    }

    @Test
    void remarksBlankLinesAByteOrderMarkAndWindowsLineEndsAreToleratedInAFile() throws IOException {
        WordList list = read("\ufeffhay\r\n# a remark\r\n\r\n  Water  # and another\r\n");

        assertThat(list.holds("hay")).isTrue();
        assertThat(list.holds("water")).isTrue();
        assertThat(list.holds("remark")).isFalse();
        assertThat(list.holds("and")).isFalse();
    }

    @Test
    void anUnfamiliarWordCountsOnceForSpacheAndEachTimeForDaleChall() throws IOException {
        String text = "Groom the dewlap. The Dewlap is big, 7 dewlaps.";

        WordList list = read("groom\nthe\nis\nbig\n");

        assertThat(list.distinctUnfamiliar(text)).isEqualTo(2);
        assertThat(list.unfamiliar(text)).isEqualTo(3);
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        assertThatThrownBy(() -> WordList.read(folder.resolve("none.txt")))
                .isInstanceOf(UncheckedIOException.class)
                .hasCauseInstanceOf(NoSuchFileException.class)
                .hasMessageContaining("none.txt");
    }

    @Test
    void aFileWithoutWordsAndAFileThatIsNoTextAreRefused() throws IOException {
        assertThatThrownBy(() -> read("# nothing yet\n"))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("words.txt: no words; write one a line");

        Path picture = Files.write(folder.resolve("picture.txt"), new byte[] {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff});
        assertThatThrownBy(() -> WordList.read(picture)).isInstanceOf(UncheckedIOException.class);
    }

    private WordList list() throws IOException {
        return read("rabbit\nbox\ngroom\nbake\nhop\nbig\ncarry\nhappy\ndo\nis\nit\n");
    }

    private WordList read(String text) throws IOException {
        return WordList.read(Files.writeString(folder.resolve("words.txt"), text, UTF_8));
    }
}
