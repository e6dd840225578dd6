package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.Preview;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures beside the files, to look at before anything is printed. */
final class PicturesTest {
    @TempDir
    private Path folder;

    @Test
    void publishPicturesEveryFileAndTakesThePicturesAwayWhenTheyAreNotWanted() throws IOException {
        Path tree = Trees.small(folder);
        assertPictured("publish", "--content", tree.toString(), "--out", out(), "--pictures");
        Run plain = Run.of("publish", "--content", tree.toString(), "--out", out());
        assertThat(plain.exit()).as(plain.err()).isEqualTo(Exit.DONE);
        assertThat(folder.resolve("out/pictures")).doesNotExist();
    }

    @Test
    void aPacketIsPicturedToo() throws IOException {
        Path tree = Trees.small(folder);
        assertPictured("packets", "--content", tree.toString(), "--out", out(), "--only", "Deja", "--pictures");
    }

    @Test
    void cardsPrintedAgainWithoutPicturesLeaveNoOldOnes() throws IOException {
        Path tree = Trees.small(folder);
        String[] plain = {"cards", "--content", tree.toString(), "--out", out(), "--level", "junior"};
        assertPictured(Stream.concat(Stream.of(plain), Stream.of("--pictures")).toArray(String[]::new));
        Run again = Run.of(plain);
        assertThat(again.exit()).as(again.err()).isEqualTo(Exit.DONE);
        assertThat(Trees.bytes(folder.resolve("out")).keySet()).noneMatch(name -> name.endsWith(".png"));
    }

    /** A PNG for every twelve pages of each PDF, and no other. */
    private void assertPictured(String... command) throws IOException {
        Run run = Run.of(command);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        Map<String, byte[]> files = Trees.bytes(folder.resolve("out"));
        Set<String> wanted = new TreeSet<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith(".pdf")) {
                int pages = pages(file.getValue());
                for (int no = 1; no <= Preview.sheets(pages); no++) {
                    wanted.add("pictures/" + file.getKey().replaceFirst("\\.pdf$", "-0" + no + ".png"));
                }
            }
        }
        Set<String> pictures = files.keySet().stream()
                .filter(name -> name.endsWith(".png"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(pictures).isNotEmpty().isEqualTo(wanted);
        for (String picture : pictures) {
            assertThat(ImageIO.read(new ByteArrayInputStream(files.get(picture))))
                    .as(picture)
                    .isNotNull();
        }
    }

    private static int pages(byte[] file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            return pdf.getNumberOfPages();
        }
    }

    private String out() {
        return folder.resolve("out").toString();
    }
}
