package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hutchleaf.press.PdfUa;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Everything printed with {@code --saver}, as poppler draws it. Pages that are read have on average about the ink that
 * cartridges are rated by. A page full of figures, boxes or text for a judge has more: its lines are as thin as they may be.
 */
final class SaverTest {
    /** Cartridges are rated by pages of 5 % (ISO/IEC 19752 and what makers state by it, from memory); text of 13 pt has it alone. */
    private static final double MEAN = 0.0525;

    /** The grid for ten contestants has some 8 %, of lines that are as thin as may be written on. */
    private static final double MOST = 0.085;

    @TempDir
    private static Path out;

    private static final Map<String, List<Double>> INK = new TreeMap<>();

    @BeforeAll
    static void print() throws IOException {
        for (List<String> command : List.of(List.of("packets"), List.of("scoresheets"))) {
            Run run = Run.of(Stream.concat(command.stream(), Stream.of("--saver", "--out", out.toString()))
                    .toArray(String[]::new));
            assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        }
        assumeTrue(PopplerInk.isThere(), "pdftoppm of poppler is not on this machine");
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file :
                    files.filter(found -> found.toString().endsWith(".pdf")).toList()) {
                INK.put(out.relativize(file).toString(), PopplerInk.of(file));
            }
        }
    }

    @Test
    void noPageIsBlackByMoreThanItsLinesNeed() {
        assertThat(INK).containsKeys("packets/juniper-h/2-cards.pdf", "print-plan.pdf");
        assertThat(INK.entrySet().stream()
                        .flatMap(file -> Stream.iterate(0, page -> page + 1)
                                .limit(file.getValue().size())
                                .filter(page -> file.getValue().get(page) >= MOST)
                                .map(page -> String.format(
                                        Locale.ROOT,
                                        "%s, page %d: %.2f %%",
                                        file.getKey(),
                                        page + 1,
                                        file.getValue().get(page) * 100))))
                .isEmpty();
    }

    @Test
    void whatIsReadIsBlackByAboutFiveInAHundredOnAverage() {
        INK.forEach((file, shares) -> {
            if (file.endsWith("1-read.pdf")) {
                assertThat(shares.stream().mapToDouble(share -> share).average().orElse(1))
                        .as(file)
                        .isLessThan(MEAN);
            }
        });
    }

    @Test
    void pagesThatSaveInkArePdfUa() throws IOException {
        for (String name : List.of("packets/juniper-h/1-read.pdf", "packets/juniper-h/3-sheets.pdf")) {
            assertThat(PdfUa.violations(Files.readAllBytes(out.resolve(name)))).isEmpty();
        }
    }
}
