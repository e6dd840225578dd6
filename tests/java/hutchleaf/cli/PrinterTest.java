package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.press.PdfGlyphs;
import hutchleaf.press.PdfUa;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One printer's faults from the outside: the sheet that measures them, and the files that are corrected for them. */
final class PrinterTest {
    private static final String CLUB = """
            ---
            name: Quarry Bend Small Stock Club
            show-date: 2026-08-08
            rule-set: age in September
            start-date: 2026-06-27
            ---
            Dear {member.first name}, practise a little every day.
            """;

    private static final String MEMBERS = """
            member_name,birth_date,years_in_club,rabbit_name,breed,colour,sex,rabbit_birth_date,ear_number
            Alder Sample,2016-03-14,2,Pebble,Dutch,black,buck,2026-01-05,AS1
            """;

    @TempDir
    private Path folder;

    private Path out(String name) {
        return folder.resolve(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"letter", "a4"})
    void theRulerIsOneSheetOfTwoPages(String paper) throws IOException {
        Run run = Run.of("ruler", "--paper", paper, "--out", out("ruler").toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("ruler.pdf", "Print ruler.pdf on both sides at its true size (100 %).");
        byte[] pdf = Files.readAllBytes(out("ruler").resolve("ruler.pdf"));
        assertThat(PdfGlyphs.of(pdf))
                .anyMatch(word -> word.page() == 2 && word.text().equals("club.md"));
    }

    @Test
    void aRulerWithoutItsTemplatesIsRefusedInOneLine() {
        Run run = Run.of("ruler", "--templates", out("none").toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines()).containsExactly(out("none") + ": there is no such folder; name one that is there");
    }

    @ParameterizedTest
    @CsvSource({"cards, 3", "booklet, 3"})
    void numbersThatNoPrinterHasAreRefusedInOneLine(String command, int of) {
        Run run = Run.of(
                command, "--printer", "100,100," + of, "--out", out("none").toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines())
                .containsExactly("--printer: cannot read '100,100,3'; write four numbers: scale-x, scale-y in per cent,"
                        + " offset-x, offset-y in mm, as in 99.2, 99.5, 0.5, -1");
        assertThat(out("none")).doesNotExist();
    }

    /** Letter sideways has its middle at 139.7 and 107.95 mm; long edge: x of a back is seen as it is, y upside down. */
    @ParameterizedTest
    @CsvSource({"long-edge, 1, -1", "short-edge, -1, 1"})
    void cardsForBothSidesAreDrawnSoThatFrontsAndBacksMeet(String sides, int right, int down) throws IOException {
        List<PdfGlyphs.Run> plain = cards("plain", "--sides", sides);
        List<PdfGlyphs.Run> corrected = cards("corrected", "--sides", sides, "--printer", "99,101,0.5,-1");
        assertThat(corrected).hasSameSizeAs(plain);
        for (int i = 0; i < plain.size(); i++) {
            PdfGlyphs.Run is = corrected.get(i);
            int back = is.page() % 2 == 0 ? 1 : 0;
            double x = 139.7 + 0.99 * (is.x() - 139.7) + back * right * 0.5;
            double y = 107.95 + 1.01 * (is.y() - 107.95) - back * down * 1;
            assertThat(x).as(is.toString()).isCloseTo(plain.get(i).x(), within(0.02));
            assertThat(y).as(is.toString()).isCloseTo(plain.get(i).y(), within(0.02));
        }
    }

    private List<PdfGlyphs.Run> cards(String to, String... more) throws IOException {
        Path tree = folder.resolve("content");
        List<String> args = new ArrayList<>(List.of(
                "cards",
                "--level",
                "junior",
                "--content",
                (Files.exists(tree) ? tree : Trees.small(folder)).toString(),
                "--out",
                out(to).toString()));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.err()).isEmpty();
        Map<String, byte[]> files = Trees.bytes(out(to));
        byte[] pdf = file(
                files,
                files.keySet().stream()
                        .filter(name -> name.endsWith(".pdf"))
                        .findFirst()
                        .orElse("no cards"));
        assertThat(PdfUa.violations(pdf)).isEmpty();
        return PdfGlyphs.of(pdf);
    }

    @Test
    void printThatIsBroughtTooNearToAnEdgeIsToldOnce() throws IOException {
        Path tree = Trees.small(folder);
        Run run = Run.of(
                "cards",
                "--level",
                "junior",
                "--content",
                tree.toString(),
                "--printer",
                "96,100,0,0",
                "--out",
                out("near").toString());
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        assertThat(run.errLines())
                .containsExactly(
                        "warning: --printer: the printer's corrections bring print of cards/flashcards-junior-standard.pdf"
                                + " nearer than 6 mm to the edge of the sheet, where many printers leave it blank; print one sheet and"
                                + " look at its edges; if something is missing, measure again with 'hutchleaf ruler'");
    }

    /** Page 2 of the sheets is the back of the first; turned on the short edge, right and left change places. */
    @Test
    void theSheetsOfABookletAreCorrectedAndItsPagesToReadAreNot() throws IOException {
        Map<String, byte[]> plain = booklet("plain");
        Map<String, byte[]> corrected = booklet("corrected", "--printer", "100,100,2,1");
        String read = "booklets/lean-guide-primary.pdf";
        String sheets = "booklets/lean-guide-primary-sheets.pdf";
        assertThat(corrected.get(read)).isEqualTo(plain.get(read));
        List<PdfGlyphs.Run> before = PdfGlyphs.of(file(plain, sheets));
        List<PdfGlyphs.Run> after = PdfGlyphs.of(file(corrected, sheets));
        assertThat(after).hasSameSizeAs(before);
        for (int i = 0; i < before.size(); i++) {
            int back = after.get(i).page() % 2 == 0 ? 1 : 0;
            assertThat(after.get(i).x()).isCloseTo(before.get(i).x() + 2 * back, within(0.02));
            assertThat(after.get(i).y()).isCloseTo(before.get(i).y() - back, within(0.02));
        }
        assertThat(PdfUa.violations(file(corrected, sheets))).isEmpty();
    }

    private Map<String, byte[]> booklet(String to, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of("booklet", "--level", "primary", "--out", out(to).toString()));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return Trees.bytes(out(to));
    }

    @Test
    void theCardsOfPacketsAreCorrectedAndNothingElse() throws IOException {
        Map<String, byte[]> plain = packets("plain", CLUB);
        Map<String, byte[]> corrected =
                packets("corrected", CLUB.replace("rule-set", "printer: 99, 100, 3, 0\nrule-set"));
        assertThat(corrected.keySet()).isEqualTo(plain.keySet());
        Map<String, Boolean> changed = new TreeMap<>();
        plain.forEach((name, bytes) -> {
            if (name.startsWith("packets/alder-s/")) {
                changed.put(name, !Arrays.equals(bytes, corrected.get(name)));
            }
        });
        assertThat(changed)
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "packets/alder-s/1-read.pdf", false,
                        "packets/alder-s/2-cards.pdf", true,
                        "packets/alder-s/3-sheets.pdf", false));
        String cards = "packets/alder-s/2-cards.pdf";
        List<PdfGlyphs.Run> before = PdfGlyphs.of(file(plain, cards));
        List<PdfGlyphs.Run> after = PdfGlyphs.of(file(corrected, cards));
        for (int i = 0; i < before.size(); i++) {
            // All pages are fronts: the offset moves none of them.
            assertThat(139.7 + 0.99 * (after.get(i).x() - 139.7))
                    .isCloseTo(before.get(i).x(), within(0.02));
        }
        assertThat(PdfUa.violations(file(corrected, cards))).isEmpty();
    }

    private Map<String, byte[]> packets(String to, String club) throws IOException {
        Path tree = folder.resolve("content");
        Path from = Files.createDirectories(folder.resolve("club"));
        Files.writeString(from.resolve("club.md"), club);
        Files.writeString(from.resolve("members.csv"), MEMBERS);
        Run run = Run.of(
                "packets",
                from.toString(),
                "--content",
                (Files.exists(tree) ? tree : Trees.small(folder)).toString(),
                "--today",
                "2026-06-20",
                "--out",
                out(to).toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return Trees.bytes(out(to));
    }

    private static byte[] file(Map<String, byte[]> files, String name) {
        return Optional.ofNullable(files.get(name)).orElseThrow(() -> new AssertionError(name + " is missing"));
    }
}
