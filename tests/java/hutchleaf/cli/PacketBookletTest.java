package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.CopiedPage;
import hutchleaf.press.CopiedPage.Copier;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Packets as booklets to fold, read back from the demo club's sheets as they leave the printer. */
final class PacketBookletTest {
    private static final double HALF_OF_LETTER = 279.4 / 2;
    private static final int FIRST_ON_BACK = 5;
    private static final int LAST_ON_BACK = 13;

    /** Smallest type of notes; design rule of the pages. */
    private static final double NOTE = 9.45;

    private static final Pattern NUMBER = Pattern.compile("page (\\d+)\\b");
    private static final Pattern SPAN = Pattern.compile("stops (\\d+) to (\\d+)");

    @TempDir
    private static Path out;

    /** The words of one half of a sheet's side; the foot line is painted first. */
    private record Half(int side, boolean left, String text) {
        private int pageNumber() {
            return NUMBER.matcher(text)
                    .results()
                    .findFirst()
                    .map(found -> Integer.parseInt(found.group(1)))
                    .orElse(0);
        }
    }

    @BeforeAll
    static void print() {
        Run run = Run.of("packets", "--booklet", "--out", out.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
    }

    private static byte[] bytes(String file) {
        try {
            return Files.readAllBytes(out.resolve("packets").resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Half> halves(String member) {
        Map<String, List<Word>> words = PdfWords.of(bytes(member + "/1-booklet.pdf")).stream()
                .collect(Collectors.groupingBy(
                        word -> String.format("%03d", word.page()) + (word.x() < HALF_OF_LETTER ? "L" : "R"),
                        TreeMap::new,
                        Collectors.toList()));
        List<Half> halves = new ArrayList<>();
        words.forEach((key, found) -> halves.add(new Half(
                Integer.parseInt(key.substring(0, 3)),
                key.endsWith("L"),
                found.stream().map(Word::text).collect(Collectors.joining(" ")))));
        return halves;
    }

    @ParameterizedTest
    @ValueSource(strings = {"fern-q/1-booklet.pdf", "juniper-h/1-booklet.pdf"})
    void aCopyOfACopyLosesNoWordAndNoRule(String file) throws IOException {
        assertThat(CopiedPage.lost(bytes(file), Copier.A_COPY_OF_A_COPY)).isEmpty();
    }

    /** Page orders: a sheet folded once has its outer pages on one side and its inner ones on the other; common practice. */
    @ParameterizedTest
    @ValueSource(strings = {"fern-q", "juniper-h", "ezra-f", "maren-s", "ansel-v"})
    void foldedAndNestedThePagesFollowOneAnother(String member) {
        List<Half> halves = halves(member);
        int sides = halves.stream().mapToInt(Half::side).max().orElseThrow();
        int places = sides * 2;
        assertThat(places % 4).isZero();
        Map<Integer, Half> pages = new TreeMap<>();
        halves.forEach(half -> pages.put(half.pageNumber(), half));
        assertThat(pages.keySet())
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, pages.size()).boxed().toList());
        assertThat(places - pages.size()).as("empty pages at the end").isBetween(0, 3);
        pages.forEach((page, half) -> {
            int sheet = (Math.min(page, places + 1 - page) - 1) / 2;
            boolean front = page % 2 == 1 == page <= places / 2;
            assertThat(half.left())
                    .as("an even page lies at the left: %d", page)
                    .isEqualTo(page % 2 == 0);
            assertThat(half.side()).as("side of page %d", page).isEqualTo(2 * sheet + (front ? 1 : 2));
        });
        assertThat(pages.get(1)).extracting(Half::text).asString().contains("page 1 Show booklet for");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fern-q", "juniper-h", "ezra-f", "ansel-v"})
    void everyStopIsThereOnceAndTheStopRuleWhereTheRabbitMayStruggle(String member) {
        List<String> pages = halves(member).stream()
                .map(Half::text)
                .filter(text -> text.matches(".* page \\d+ My routine.*"))
                .toList();
        TreeMap<Integer, Integer> spans = new TreeMap<>();
        for (String page : pages) {
            MatchResult span = SPAN.matcher(page).results().findFirst().orElseThrow();
            int first = Integer.parseInt(span.group(1));
            int last = Integer.parseInt(span.group(2));
            spans.put(first, last);
            if (first <= LAST_ON_BACK && last >= FIRST_ON_BACK) {
                assertThat(page).contains("Stop rule. It kicks, pants or shakes?");
            }
        }
        assertThat(spans).containsEntry(1, 2);
        assertThat(spans.lastEntry().getValue()).isEqualTo(16);
        int before = 0;
        for (Map.Entry<Integer, Integer> span : spans.entrySet()) {
            assertThat(span.getKey()).isGreaterThan(before);
            before = span.getValue();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fern-q", "juniper-h", "ezra-f", "ansel-v"})
    void noTypeIsSmallerThanANoteOfAWholePage(String member) {
        assertThat(PdfWords.of(bytes(member + "/1-booklet.pdf")))
                .allSatisfy(word -> assertThat(word.size()).as(word.toString()).isGreaterThan(NOTE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"fern-q", "juniper-h", "maren-s", "any-rabbit-junior"})
    void bookletAndPocketSheetPassPdfUa(String folder) {
        assertThat(PdfUa.violations(bytes(folder + "/1-booklet.pdf"))).isEmpty();
        assertThat(PdfUa.violations(bytes(folder + "/1-pocket.pdf"))).isEmpty();
    }

    @Test
    void theMemberWithTwoRabbitsGetsAPocketSheetForEach() {
        String text = PdfWords.of(bytes("maren-s/1-pocket.pdf")).stream()
                .map(Word::text)
                .collect(Collectors.joining(" "));
        assertThat(text).contains("Alba").contains("Pip");
        assertThat(PdfWords.of(bytes("maren-s/1-pocket.pdf")).stream().map(Word::page))
                .contains(1, 2)
                .doesNotContain(3);
    }

    @Test
    void thePrintPlanCountsTheSheetsAndTellsHowToFold() throws IOException {
        String plan = PdfWords.of(Files.readAllBytes(out.resolve("print-plan.pdf"))).stream()
                .map(Word::text)
                .collect(Collectors.joining(" "));
        int sides = halves("ezra-f").stream().mapToInt(Half::side).max().orElseThrow();
        assertThat(plan)
                .contains("1-booklet, intermediate")
                .contains("turned over the short edge")
                .contains(sides + " both sides plain paper");
    }
}
