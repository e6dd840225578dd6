package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.CopiedPage;
import hutchleaf.press.CopiedPage.Copier;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo club's packets, read back as members, parents and the leader read them. */
final class DemoPacketsTest {
    @TempDir
    private static Path out;

    private static Run run = new Run(-1, "", "");
    private static final Map<String, List<String>> TEXTS = new TreeMap<>();

    @BeforeAll
    static void print() {
        run = Run.of("packets", "--out", out.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
    }

    /** The words of each page, with every run of white space as one space. */
    private static synchronized List<String> pages(String file) {
        return TEXTS.computeIfAbsent(file, name -> {
            byte[] pdf = bytes(name);
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= count(pdf); page++) {
                List<String> words = new ArrayList<>();
                for (PdfWords.Word word : PdfWords.of(pdf)) {
                    if (word.page() == page) {
                        words.add(word.text());
                    }
                }
                pages.add(String.join(" ", words));
            }
            return pages;
        });
    }

    /** What stands in the right column, line by line. */
    private static String speech(String file) {
        try (PDDocument document = Loader.loadPDF(bytes(file))) {
            PDFTextStripperByArea stripper = new PDFTextStripperByArea();
            stripper.setSortByPosition(true);
            stripper.addRegion("right", new Rectangle(230, 0, 400, 850));
            StringBuilder text = new StringBuilder();
            for (PDPage page : document.getPages()) {
                stripper.extractRegions(page);
                text.append(stripper.getTextForRegion("right")).append(' ');
            }
            return text.toString().replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String all(String file) {
        return String.join(" ", pages(file));
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

    private static List<String> packets() throws IOException {
        try (Stream<Path> folders = Files.list(out.resolve("packets"))) {
            return folders.map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    /** Some files of each division, and the leader's plan. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "packets/fern-q/1-read.pdf",
                "packets/fern-q/3-sheets.pdf",
                "packets/juniper-h/1-read.pdf",
                "packets/juniper-h/2-cards.pdf",
                "packets/juniper-h/3-sheets.pdf",
                "packets/ansel-v/1-read.pdf",
                "packets/any-rabbit-intermediate/1-read.pdf",
                "print-plan.pdf"
            })
    void aCopyOfACopyLosesNoWordAndNoRule(String file) throws IOException {
        assertThat(CopiedPage.lost(bytes(file), Copier.A_COPY_OF_A_COPY)).isEmpty();
    }

    @Test
    void everyMemberHasAFolderAndTwoPacketsAreFilledInByHand() throws IOException {
        assertThat(packets())
                .containsExactly(
                        "ansel-v",
                        "any-rabbit-intermediate",
                        "any-rabbit-junior",
                        "deja-l",
                        "ezra-f",
                        "fern-q",
                        "isolde-b",
                        "juniper-h",
                        "kit-r",
                        "maren-s",
                        "otis-m",
                        "rowan-h",
                        "silas-p",
                        "tamsin-o",
                        "wren-t",
                        "zoe-c");
        for (String packet : packets()) {
            assertThat(out.resolve("packets").resolve(packet))
                    .isDirectoryContaining(file -> file.endsWith("1-read.pdf"))
                    .isDirectoryContaining(file -> file.endsWith("2-cards.pdf"))
                    .isDirectoryContaining(file -> file.endsWith("3-sheets.pdf"));
        }
    }

    /** What each member says at the third stop, worked by hand from the roster and the show date. */
    @ParameterizedTest
    @CsvFileSource(resources = "/demo-introductions.csv", delimiter = '|')
    void aMemberIntroducesTheirOwnRabbit(String member, String folder, String spoken) {
        String file = "packets/" + folder + "/1-read.pdf";
        assertThat(all(file)).contains("Show packet for", member);
        assertThat(speech(file)).contains(spoken);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fern-q", "wren-t", "otis-m"})
    void theYoungestNeverTurnARabbitAndGetNoPoints(String folder) {
        String read = all("packets/" + folder + "/1-read.pdf");
        String sheets = all("packets/" + folder + "/3-sheets.pdf");
        assertThat(read).doesNotContain("Turn over").contains("A grown-up reads this first.");
        assertThat(Pattern.compile("Grown-up:").matcher(read).results().count()).isEqualTo(8);
        assertThat(sheets)
                .contains("What went well")
                .doesNotContain("Score sheet")
                .doesNotContain("points");
    }

    @Test
    void theStopRuleStandsOnEveryPageOfTheRoutineWithARabbitOnItsBack() throws IOException {
        for (String packet : packets()) {
            List<String> pages = pages("packets/" + packet + "/1-read.pdf");
            List<String> back = pages.stream()
                    .filter(page -> Pattern.compile("stops (\\d+) to (\\d+)")
                            .matcher(page)
                            .results()
                            .anyMatch(span ->
                                    Integer.parseInt(span.group(2)) >= 5 && Integer.parseInt(span.group(1)) <= 13))
                    .toList();
            assertThat(back)
                    .as(packet)
                    .isNotEmpty()
                    .allSatisfy(page -> assertThat(page)
                            .contains("Stop rule. It kicks, pants or shakes?")
                            .contains("It costs nothing."));
        }
    }

    @Test
    void noChildsBirthDateIsPrinted() throws IOException {
        List<String> born = List.of(
                "2020-02-09",
                "2019-03-14",
                "2018-05-02",
                "2017-04-11",
                "2016-12-25",
                "2015-07-19",
                "2014-10-30",
                "2013-11-06",
                "2012-09-15",
                "2011-10-03",
                "2009-08-31",
                "2010-06-21",
                "2008-01-17",
                "2007-12-02");
        for (String packet : packets()) {
            String text = all("packets/" + packet + "/1-read.pdf")
                    + all("packets/" + packet + "/2-cards.pdf")
                    + all("packets/" + packet + "/3-sheets.pdf");
            for (String day : born) {
                String year = day.substring(0, 4);
                assertThat(text).as(packet).doesNotContain(day);
                assertThat(Pattern.compile("\\b" + year + "\\b").matcher(text).find())
                        .as("%s prints %s", packet, year)
                        .isFalse();
            }
        }
    }

    @Test
    void aFirstYearSeniorStudiesALevelLowerAndIsScoredAsASenior() {
        List<String> read = pages("packets/kit-r/1-read.pdf");
        assertThat(read.get(0)).contains("Senior, with the words of intermediate");
        assertThat(all("packets/kit-r/2-cards.pdf")).contains("Intermediate deck");
        assertThat(all("packets/kit-r/3-sheets.pdf")).contains("Score sheet").contains("Senior");
    }

    @Test
    void aMemberWithTwoRabbitsHasPagesAndCardsForBoth() {
        String read = all("packets/maren-s/1-read.pdf");
        assertThat(read)
                .contains("My rabbit: Alba")
                .contains("My rabbit: Pip")
                .contains("The breed: New Zealand")
                .contains("The breed: Californian")
                .contains("My routine with Alba")
                .contains("My routine with Pip");
        List<String> codes = Pattern.compile("\\b20\\.\\d+\\b")
                .matcher(all("packets/maren-s/2-cards.pdf"))
                .results()
                .map(code -> code.group())
                .toList();
        assertThat(codes)
                .allSatisfy(code -> assertThat(codes.stream().filter(code::equals))
                        .as("a front and a back with %s", code)
                        .hasSize(2));
    }

    @Test
    void aBreedIsPrintedInFullAndWhatRestsOnMemoryIsLeftToFillIn() {
        assertThat(all("packets/juniper-h/1-read.pdf"))
                .contains("The breed: Havana")
                .contains("Senior buck 4.5 to 6.5 lb")
                .contains("Senior doe 4.5 to 6.5 lb")
                .contains("Show classes four");
        // The table is not sure of the nails of a castor.
        assertThat(all("packets/ezra-f/1-read.pdf")).contains("Nail colour check your breed standard");
    }

    @Test
    void thePlanEndsWithTheShowAndCountsTheDays() {
        List<String> plan = pages("packets/juniper-h/1-read.pdf").stream()
                .filter(page -> page.contains("days to the show"))
                .toList();
        assertThat(plan).hasSize(1);
        assertThat(plan.get(0))
                .contains("42 days to the show")
                .contains("27 Jun 42 to go")
                .contains("1 Aug 7 to go")
                .contains("8 Show day")
                .contains("soft toy 1\u20134");
    }

    @Test
    void aPacketTakesTenToTwelveSheetsBesidesCards() throws IOException {
        for (String packet : packets()) {
            int read = count(bytes("packets/" + packet + "/1-read.pdf"));
            int sheets = count(bytes("packets/" + packet + "/3-sheets.pdf"));
            int rabbits = packet.equals("maren-s") ? 2 : 1;
            assertThat((read + 1) / 2 + sheets).as(packet).isBetween(9, 12 + 6 * (rabbits - 1));
        }
    }

    @Test
    void eachFileNumbersItsOwnPages() {
        List<String> read = pages("packets/deja-l/1-read.pdf");
        for (int page = 1; page <= read.size(); page++) {
            assertThat(read.get(page - 1)).contains("page " + page + " of " + read.size());
        }
        List<String> cards = pages("packets/deja-l/2-cards.pdf");
        for (int sheet = 1; sheet <= cards.size(); sheet++) {
            assertThat(cards.get(sheet - 1)).contains("sheet " + sheet + " of " + cards.size());
        }
        assertThat(pages("packets/deja-l/3-sheets.pdf").get(0)).contains("page 1 of 4");
    }

    @Test
    void thePocketSheetLiesOnAFrontSide() throws IOException {
        for (String packet : packets()) {
            List<String> pages = pages("packets/" + packet + "/1-read.pdf");
            for (int page = 1; page <= pages.size(); page++) {
                if (pages.get(page - 1).contains("Pocket sheet 1 Fold")) {
                    assertThat(page % 2).as("%s, page %d", packet, page).isEqualTo(1);
                }
            }
            assertThat(String.join(" ", pages)).as(packet).contains("Pocket sheet 1 Fold");
        }
    }

    /** Sheets: a page each, both sides of one where a file is read; cards on card (ceil, see a ream's arithmetic). */
    @Test
    void thePrintPlanAddsUpToThePagesOfTheFiles() throws IOException {
        int plain = 0;
        int card = 0;
        int pages = 0;
        for (String packet : packets()) {
            int read = count(bytes("packets/" + packet + "/1-read.pdf"));
            int cards = count(bytes("packets/" + packet + "/2-cards.pdf"));
            int sheets = count(bytes("packets/" + packet + "/3-sheets.pdf"));
            plain += (read + 1) / 2 + sheets;
            card += cards;
            pages += read + cards + sheets;
        }
        int spare = (plain * 5 + 99) / 100 + (card * 5 + 99) / 100;
        String plan = all("print-plan.pdf");
        assertThat(plan)
                .contains((plain + card + spare) + " sheets")
                .contains(pages + " pages at 10 a minute")
                .contains("Spare plain paper, 5 % of " + plain)
                .contains("Spare card, 5 % of " + card)
                .contains("14 members");
        assertThat(run.out()).containsPattern("in all +" + pages + " +" + (plain + card));
    }

    /** ISO 14289-1:2014, by veraPDF: the merged files as well as the plain ones. */
    @ParameterizedTest
    @ValueSource(
            strings = {"juniper-h/1-read", "juniper-h/2-cards", "juniper-h/3-sheets", "fern-q/1-read", "maren-s/2-cards"
            })
    void aPacketIsPdfUa(String file) {
        assertThat(PdfUa.violations(bytes("packets/" + file + ".pdf"))).isEmpty();
    }
}
