package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same tree gives the same bytes, wherever and whenever it is published. */
final class SameBytesTest {
    /** A Turkish machine writes a dotless i for a small I; Chatham is 12 h 45 min ahead and already in tomorrow. */
    private static final List<String> ELSEWHERE = List.of(
            "-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Chatham", "-Dfile.encoding=ISO-8859-9");

    @TempDir
    private Path folder;

    @Test
    void aTreePublishedOnAnotherMachineIsTheSameToTheByte() throws IOException, InterruptedException {
        Path tree = Trees.whole(folder);
        Path here = folder.resolve("here");
        Path there = folder.resolve("a folder/of another name");
        Run run = Run.of("publish", "--content", tree.toString(), "--out", here.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        publishElsewhere(tree, there);
        Map<String, byte[]> first = Trees.bytes(here);
        Map<String, byte[]> second = Trees.bytes(there);
        assertThat(second.keySet()).isEqualTo(first.keySet());
        assertThat(first).hasSizeGreaterThan(10);
        first.forEach((name, bytes) -> assertThat(second.get(name)).as(name).isEqualTo(bytes));
    }

    private void publishElsewhere(Path tree, Path out) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(ELSEWHERE);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of("publish", "--content", tree.toString(), "--out", out.toString(), "--paper", "LETTER"));
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor()).as(Files.readString(said)).isEqualTo(Exit.DONE);
    }
}
