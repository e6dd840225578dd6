package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hutchleaf.press.CopiedPage;
import hutchleaf.press.CopiedPage.Copier;
import hutchleaf.press.InkMeter;
import hutchleaf.press.PdfUa;
import hutchleaf.press.Printed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything that is printed with {@code --saver}. */
final class SaverTest {
    /** Cartridges are rated by pages that are black by 5 % (ISO/IEC 19752 and what makers state by it, from memory). */
    private static final double MOST = 0.05;

    /** How far the two measures may be apart, of a page: a line of poppler's is whole dots thick. */
    private static final double APART = 0.002;

    @TempDir
    private static Path out;

    private static final Map<String, List<Double>> INK = new TreeMap<>();

    @BeforeAll
    static void print() throws IOException {
        for (String command : List.of("publish", "packets", "scoresheets")) {
            print(command, "--out", out.toString());
        }
        print("packets", "--booklet", "--out", out.resolve("folded").toString());
        InkMeter meter = new InkMeter();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file :
                    files.filter(found -> found.toString().endsWith(".pdf")).toList()) {
                Printed pages = new Printed(Files.readAllBytes(file), 1, Map.of());
                INK.put(out.relativize(file).toString().replace('\\', '/'), meter.of(pages));
            }
        }
    }

    private static void print(String command, String... more) {
        Run run = Run.of(
                Stream.concat(Stream.of(command, "--saver"), Stream.of(more)).toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
    }

    @Test
    void noPageIsBlackByMoreThanFiveInAHundred() {
        assertThat(INK)
                .containsKeys(
                        "packets/juniper-h/2-cards.pdf",
                        "folded/packets/maren-s/1-booklet.pdf",
                        "print-plan.pdf",
                        "judge/judge-1-senior.pdf",
                        "guides/study-guide-senior.pdf",
                        "cards/flashcards-senior.pdf");
        List<String> blacker = new ArrayList<>();
        INK.forEach((file, shares) -> {
            for (int page = 0; page < shares.size(); page++) {
                if (shares.get(page) >= MOST) {
                    blacker.add(
                            String.format(Locale.ROOT, "%s, page %d: %.2f %%", file, page + 1, shares.get(page) * 100));
                }
            }
        });
        assertThat(blacker).isEmpty();
    }

    /** What the print plan states is what another renderer draws: poppler, letters, lines and figures. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "packets/fern-q/1-read.pdf",
                "packets/juniper-h/1-read.pdf",
                "packets/juniper-h/2-cards.pdf",
                "packets/isolde-b/3-sheets.pdf",
                "judge/judge-1-senior.pdf",
                "print-plan.pdf"
            })
    void theInkIsWhatPopplerDraws(String file) throws IOException {
        assumeTrue(PopplerInk.isThere(), "pdftoppm of poppler is not on this machine");
        List<Double> drawn = PopplerInk.of(out.resolve(file));
        List<Double> measured = INK.getOrDefault(file, List.of());
        assertThat(measured).hasSameSizeAs(drawn);
        for (int page = 0; page < drawn.size(); page++) {
            assertThat(Math.abs(measured.get(page) - drawn.get(page)))
                    .as("%s, page %d: measured %s, drawn %s", file, page + 1, measured.get(page), drawn.get(page))
                    .isLessThan(APART);
        }
    }

    /** Thin letters do not live through a copy of a copy as those of other pages do: what is to be copied is printed without. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "packets/fern-q/1-read.pdf",
                "packets/juniper-h/1-read.pdf",
                "packets/juniper-h/2-cards.pdf",
                "packets/juniper-h/3-sheets.pdf",
                "guides/study-guide-senior.pdf",
                "judge/judge-1-junior.pdf"
            })
    void aGoodCopyLosesNoWordAndNoRule(String file) throws IOException {
        assertThat(CopiedPage.lost(Files.readAllBytes(out.resolve(file)), Copier.A_GOOD_COPY))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "packets/juniper-h/1-read.pdf",
                "packets/juniper-h/3-sheets.pdf",
                "judge/judge-1-junior.pdf",
                "cards/flashcards-senior.pdf"
            })
    void pagesThatSaveInkArePdfUa(String file) throws IOException {
        assertThat(PdfUa.violations(Files.readAllBytes(out.resolve(file)))).isEmpty();
    }
}
