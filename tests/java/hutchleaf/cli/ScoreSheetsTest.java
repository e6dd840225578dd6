package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.Preview;
import java.io.ByteArrayInputStream;
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
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo club's show on the clipboards of two judges, read as they and their clerks read it. */
final class ScoreSheetsTest {
    private static final List<String> FILES = Stream.of("primary", "junior", "intermediate", "senior")
            .flatMap(level -> Stream.of("judge/judge-1-" + level + ".pdf", "judge/judge-2-" + level + ".pdf"))
            .toList();

    @TempDir
    private static Path out;

    private static final Map<String, List<String>> TEXTS = new TreeMap<>();

    @BeforeAll
    static void print() {
        Run run = Run.of("scoresheets", "--judges", "2", "--pictures", "--out", out.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.err()).isEmpty();
    }

    @Test
    void eachJudgeGetsAFileForEachDivision() {
        assertThat(FILES).allSatisfy(file -> assertThat(out.resolve(file)).isRegularFile());
    }

    @Test
    void theClipboardIsInTheOrderInWhichItIsUsed() {
        assertThat(heads("judge/judge-1-junior.pdf"))
                .containsExactly(
                        "Check-in",
                        "Order of showing",
                        "Score sheet 4",
                        "Score sheet 5",
                        "Score sheet 6",
                        "Score sheet 7",
                        "Score sheet",
                        "Score grid",
                        "Sealed",
                        "Questions",
                        "Questions",
                        "Questions",
                        "Call-back list",
                        "Tally");
        assertThat(heads("judge/judge-2-junior.pdf"))
                .startsWith("The class", "Order of showing", "Score sheet 4")
                .endsWith("Call-back list");
        assertThat(heads("judge/judge-1-primary.pdf"))
                .containsExactly("Check-in", "Order of showing", "What went well", "What went well", "Talk");
    }

    /** Shows run in one order on every paper: the leader's plan has the youngest division first. */
    @Test
    void contestantsHaveTheNumbersOfTheLeadersPlan() {
        assertThat(text("judge/judge-1-primary.pdf", 2))
                .containsSubsequence("1", "Fern Q.", "2", "Wren T.", "3", "Otis M.");
        assertThat(text("judge/judge-1-senior.pdf", 2))
                .containsSubsequence("11", "Kit R.", "12", "Ansel V.", "13", "Isolde B.", "14");
        assertThat(text("judge/judge-1-senior.pdf", 3)).contains("11", "Kit R.", "Lantern, Satin", "8 Aug 2026");
    }

    @Test
    void theClerksListHasTheEarNumbersAsTheyAreWritten() {
        assertThat(text("judge/judge-1-primary.pdf", 1)).contains("Otis M.", "Domino, Dutch", "0042");
        assertThat(text("judge/judge-1-intermediate.pdf", 1)).contains("Maren S.", "Alba, New Zealand", "1E5");
    }

    @Test
    void noWholeNameIsPrintedUnlessItIsAskedFor() {
        for (String file : FILES) {
            String all = String.join(" ", pages(file));
            assertThat(all).doesNotContain("Quillby", "Hale", "Penrow", "Sollis", "Calloway", "Varga", "Lowmarsh");
        }
    }

    @Test
    void theCoverCountsThePagesThatAreThere() {
        Pattern line = Pattern.compile("(?m)^(\\d+) pages?(?:: (.*)| in all)$");
        for (String file : FILES) {
            List<MatchResult> lines = line.matcher(text(file, 1)).results().toList();
            List<Integer> counts =
                    lines.stream().map(found -> Integer.valueOf(found.group(1))).toList();
            int sum = counts.subList(0, counts.size() - 1).stream()
                    .mapToInt(Integer::intValue)
                    .sum();
            assertThat(counts.get(counts.size() - 1))
                    .as(file)
                    .isEqualTo(sum)
                    .isEqualTo(pages(file).size());
        }
        assertThat(text("judge/judge-1-junior.pdf", 1))
                .contains("5 pages: 5 score sheets: 4 contestants, 1 spare")
                .contains("Keep it dry.");
    }

    @Test
    void theYoungestHaveNoPointsAndNoPlaces() {
        List<String> pages = pages("judge/judge-1-primary.pdf");
        for (String page : pages.subList(2, pages.size() - 1)) {
            assertThat(page)
                    .doesNotContainIgnoringCase("point")
                    .doesNotContainIgnoringCase("place")
                    .doesNotContain("Score");
        }
        assertThat(String.join(" ", pages))
                .doesNotContain("Tally", "Call-back", "Sum\n", "of 100")
                .contains("no points and no places");
    }

    @Test
    void theTallyIsWithTheFirstJudgeAndAddsBoth() {
        List<String> first = pages("judge/judge-1-senior.pdf");
        assertThat(first.get(first.size() - 1))
                .contains("Judge 1", "Judge 2", "of 100", "of 200", "Tie broken on", "11", "14");
        assertThat(String.join(" ", pages("judge/judge-2-senior.pdf"))).doesNotContain("Tally");
    }

    @Test
    void bothJudgesAskTheSameSealedQuestions() {
        List<String> first = pages("judge/judge-1-senior.pdf");
        List<String> second = pages("judge/judge-2-senior.pdf");
        assertThat(first.subList(9, 12)).isEqualTo(second.subList(9, 12));
        assertThat(first.get(8)).contains("envelope", "Open it when the class is called.");
        assertThat(first.get(9)).contains("keep sealed until the class is called");
    }

    /** ISO 216 A4 is 210 by 297 mm; Letter is 8.5 by 11 inches (ANSI/ASME Y14.1). */
    @Test
    void theGridIsHeldSidewaysAndAllElseUpright() throws IOException {
        assertSizes(out.resolve("judge/judge-1-junior.pdf"), 215.9, 279.4, 8);
    }

    private static void assertSizes(Path file, double width, double height, int grid) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                double wide = pdf.getPage(page - 1).getMediaBox().getWidth() * 25.4 / 72;
                assertThat(wide).as("page %s", page).isCloseTo(page == grid ? height : width, within());
            }
        }
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(0.05);
    }

    @ParameterizedTest
    @ValueSource(strings = {"judge/judge-1-primary.pdf", "judge/judge-1-junior.pdf", "judge/judge-2-senior.pdf"})
    void aBoundFileIsPdfUa(String file) {
        assertThat(PdfUa.violations(bytes(file))).isEmpty();
    }

    @Test
    void picturesShowEveryPageOfEveryFile() throws IOException {
        for (String file : FILES) {
            int sheets = Preview.sheets(pages(file).size());
            for (int no = 1; no <= sheets; no++) {
                String picture = "pictures/" + file.replace(".pdf", "-0" + no + ".png");
                assertThat(ImageIO.read(new ByteArrayInputStream(bytes(picture))))
                        .as(picture)
                        .isNotNull();
            }
            assertThat(out.resolve("pictures/" + file.replace(".pdf", "-0" + (sheets + 1) + ".png")))
                    .doesNotExist();
        }
    }

    @Test
    void oneJudgeOnA4HasOneColumnToAddFrom(@TempDir Path folder) throws IOException {
        Run run = small(folder, "--division", "Senior", "--paper", "a4", "--names", "whole", "--title", "Autumn Show");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        Path file = folder.resolve("out/judge/judge-1-senior.pdf");
        assertSizes(file, 210, 297, 8);
        String all = text(file);
        assertThat(all)
                .contains("Ansel Varga-Wicke", "Autumn Show", "Total", "Tie broken on")
                .doesNotContain("Judge 2", "of 200");
        assertThat(folder.resolve("out/judge")).isDirectoryNotContaining("glob:**junior.pdf");
    }

    @Test
    void numbersStayWhenSomebodyJoinsAndTheLateOneShowsLast(@TempDir Path folder) throws IOException {
        Path club = Files.createDirectories(folder.resolve("club"));
        Trees.copy(Path.of("src/main/resources/demo-club"), club);
        assertThat(small(folder, club.toString(), "--division", "junior").exit())
                .isEqualTo(Exit.DONE);
        List<String> before = numbers(folder);
        assertThat(before).containsExactly("4 Juniper H.", "5 Silas P.", "6 Tamsin O.", "7 Rowan H.");

        Path roster = club.resolve("members.csv");
        List<String> rows = new ArrayList<>(Files.readAllLines(roster));
        rows.add(1, "Bryony Ashgrove,2016-05-05,,1,yes,,Clover,Polish,ruby-eyed white,doe,2025-11-20,QB12,3.1");
        Files.write(roster, rows);
        assertThat(small(folder, club.toString(), "--division", "junior").exit())
                .isEqualTo(Exit.DONE);
        List<String> after = new ArrayList<>(before);
        after.add("15 Bryony A.");
        assertThat(numbers(folder)).isEqualTo(after);
    }

    @Test
    void aBadRowStopsAllUnlessTheOthersAreAskedFor(@TempDir Path folder) throws IOException {
        Path club = Files.createDirectories(folder.resolve("club"));
        Trees.copy(Path.of("src/main/resources/demo-club"), club);
        Files.writeString(
                club.resolve("members.csv"),
                Files.readString(club.resolve("members.csv")).replaceFirst("Dutch", "Duch"));
        Run refused = small(folder, club.toString(), "--division", "junior");
        assertThat(refused.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(refused.err()).contains("Duch").contains("Nothing was written.");
        assertThat(folder.resolve("out")).doesNotExist();
        Run others = small(folder, club.toString(), "--division", "junior", "--skip-bad");
        assertThat(others.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(others.err()).contains("Duch").contains("The rows named above were left out");
        assertThat(folder.resolve("out/judge/judge-1-junior.pdf")).isRegularFile();
    }

    /** The order of showing: a number and a name on each line. */
    private static List<String> numbers(Path folder) throws IOException {
        byte[] pdf = Files.readAllBytes(folder.resolve("out/judge/judge-1-junior.pdf"));
        return Pattern.compile("(?m)^(\\d+ \\p{L}+ \\p{L}\\.)")
                .matcher(PdfWords.text(pdf, 2))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    /** A tenth of 14 is counted as 2 sheets. */
    @Test
    void blankSheetsHaveNoNamesAndNoNumbersAndATenthSpare(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("out"));
        Files.writeString(folder.resolve("out/contestants.csv"), "number,member\n9,\"Kept Here\"\n");
        Run run = small(folder, "--blank", "--copies", "14", "--division", "intermediate");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        String all = text(folder.resolve("out/judge/judge-1-intermediate.pdf"));
        assertThat(all)
                .contains("16 pages: 16 score sheets: 14 to fill in, 2 spare", "2 pages: 2 grids", "grid 2 of 2");
        assertThat(all).doesNotContain("Ezra", "Velvet", "Maren");
        assertThat(folder.resolve("out/contestants.csv")).content().contains("9,\"Kept Here\"");
    }

    @Test
    void copiesAreWholeRunsInOrder(@TempDir Path folder) throws IOException {
        Run run = small(folder, "--copies", "2", "--spare", "3", "--division", "intermediate");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        byte[] pdf = Files.readAllBytes(folder.resolve("out/judge/judge-1-intermediate.pdf"));
        assertThat(heads(pdf).subList(2, 11))
                .containsExactly(
                        "Score sheet 8",
                        "Score sheet 9",
                        "Score sheet 10",
                        "Score sheet 8",
                        "Score sheet 9",
                        "Score sheet 10",
                        "Score sheet",
                        "Score sheet",
                        "Score sheet");
        assertThat(PdfWords.text(pdf, 1)).contains("9 score sheets: 3 contestants, two each, 3 spare");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --spare | lots | --spare lots: this is no share and no number; write 10% or 2
            --judges | 3 | --judges 3: a class has one judge or two; write 1 or 2
            --copies | 0 | --copies 0: this cannot be printed; write 1 to 100
            """)
    void wrongArgumentsAreToldInALine(String option, String value, String line, @TempDir Path folder)
            throws IOException {
        Run run = Run.of(
                "scoresheets", option, value, "--out", folder.resolve("out").toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines()).containsExactly(line);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aDivisionThatIsNotThereIsToldWithTheNearest(@TempDir Path folder) throws IOException {
        Run run = small(folder, "--division", "senoir");
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.errLines())
                .containsExactly(
                        "--division senoir: there is no such division; did you mean 'Senior'?", "Nothing was written.");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aDivisionIsFoundByTheNameOfTheClubsRuleSet(@TempDir Path folder) throws IOException {
        Run run = small(folder, "--division", "youngest");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(text(folder.resolve("out/judge/judge-1-primary.pdf"))).contains("Youngest");
    }

    @Test
    void aDivisionAskedForAloneLeavesTheOthersFilesWhereTheyAre(@TempDir Path folder) throws IOException {
        assertThat(small(folder, "--division", "senior").exit()).isEqualTo(Exit.DONE);
        assertThat(small(folder, "--division", "primary").exit()).isEqualTo(Exit.DONE);
        assertThat(folder.resolve("out/judge/judge-1-senior.pdf")).isRegularFile();
        assertThat(folder.resolve("out/judge/judge-1-primary.pdf")).isRegularFile();
    }

    private static Run small(Path folder, String... more) throws IOException {
        Path tree = Files.exists(folder.resolve("content")) ? folder.resolve("content") : Trees.small(folder);
        List<String> args = new ArrayList<>(List.of(
                "scoresheets",
                "--content",
                tree.toString(),
                "--out",
                folder.resolve("out").toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private static List<String> heads(String file) {
        return heads(bytes(file));
    }

    /** What each page is, and for a score sheet the large number on it. */
    private static List<String> heads(byte[] pdf) {
        List<String> heads = new ArrayList<>();
        for (int page = 1; page <= count(pdf); page++) {
            String text = PdfWords.text(pdf, page);
            String head = Stream.of(
                            "Check-in",
                            "The class",
                            "Order of showing",
                            "Score sheet",
                            "Score grid",
                            "Sealed",
                            "Questions",
                            "Talk",
                            "Call-back list",
                            "Tally",
                            "What went well")
                    .filter(text::startsWith)
                    .findFirst()
                    .orElse(text);
            int at = page;
            String number = PdfWords.of(pdf).stream()
                    .filter(word -> word.page() == at && word.size() > 30)
                    .map(PdfWords.Word::text)
                    .findFirst()
                    .map(word -> " " + word)
                    .orElse("");
            heads.add(head + number);
        }
        return heads;
    }

    private static synchronized List<String> pages(String file) {
        return TEXTS.computeIfAbsent(file, name -> pages(bytes(name)));
    }

    private static List<String> pages(byte[] pdf) {
        List<String> pages = new ArrayList<>();
        for (int page = 1; page <= count(pdf); page++) {
            pages.add(PdfWords.text(pdf, page));
        }
        return pages;
    }

    private static String text(String file, int page) {
        return pages(file).get(page - 1);
    }

    private static String text(Path file) throws IOException {
        return String.join(" ", pages(Files.readAllBytes(file)));
    }

    private static byte[] bytes(String file) {
        try {
            return Files.readAllBytes(out.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int count(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
