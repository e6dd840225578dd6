package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.PdfWords;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code hutchleaf packets} from the outside, on small clubs and a small tree: exit codes, messages, what is left on the disk. */
final class PacketsTest {
    private static final String HEAD =
            "member_name,birth_date,years_in_club,rabbit_name,breed,colour,sex,rabbit_birth_date,ear_number\n";
    private static final String ALDER = "Alder Sample,2016-03-14,2,Pebble,Dutch,black,buck,2026-01-05,AS1\n";
    private static final String BRIAR = "Briar Sample,2010-05-20,3,Clover,Rex,castor,doe,2025-10-01,BS1\n";
    private static final String BAD = "Cedar Sample,2011-05-20,3,Moss,Duch,black,doe,2025-10-01,CS1\n";

    private static final String CLUB = """
            ---
            name: Quarry Bend Small Stock Club
            show-date: 2026-08-08
            rule-set: age in September
            start-date: 2026-06-27
            ---
            Dear {member.first name}, practise a little every day.
            """;

    @TempDir
    private Path folder;

    private Path tree = Path.of("");

    @BeforeEach
    void content() throws IOException {
        tree = Trees.small(folder);
    }

    @Test
    void aMemberGetsAPacketThatSpeaksOfTheirRabbit() throws IOException {
        Run run = packets(CLUB, HEAD + ALDER);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(files())
                .contains(
                        "packets/alder-s/1-read.pdf",
                        "packets/alder-s/2-cards.pdf",
                        "packets/alder-s/3-sheets.pdf",
                        "print-plan.pdf",
                        "contestants.csv")
                .noneMatch(name -> name.endsWith(".part"));
        assertThat(text("packets/alder-s/1-read.pdf")).contains("Dear Alder").contains("My rabbit: Pebble");
        assertThat(run.out()).contains("packets/alder-s/").contains("in all");
    }

    @Test
    void aBadRowStopsAllAndLeavesWhatWasThere() throws IOException {
        assertThat(packets(CLUB, HEAD + ALDER).exit()).isEqualTo(Exit.DONE);
        Map<String, byte[]> before = Trees.bytes(out());
        Run run = packets(CLUB, HEAD + ALDER + BAD);
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.errLines())
                .anySatisfy(line -> assertThat(line)
                        .startsWith("club/members.csv:3: ")
                        .contains("Duch")
                        .contains("Dutch"))
                .last()
                .isEqualTo("Nothing was written.");
        assertThat(Trees.bytes(out())).containsExactlyInAnyOrderEntriesOf(before);
    }

    @Test
    void theOthersArePrintedWhenAskedAndTheRunStillFails() throws IOException {
        Run run = packets(CLUB, HEAD + ALDER + BAD, "--skip-bad");
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.err()).contains("club/members.csv:3: ").contains("The rows named above were left out");
        assertThat(files()).contains("packets/alder-s/1-read.pdf").noneMatch(name -> name.contains("cedar"));
    }

    @Test
    void aNameThatTheFontsCannotDrawIsRefusedByItsRow() throws IOException {
        Run run = packets(CLUB, HEAD + ALDER + BRIAR.replace("Briar", "\u5C0F\u71D5"));
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.err()).contains("club/members.csv:3: ").contains("Han");
    }

    @Test
    void aFontOfOnesOwnPrintsNamesInItsLetters() throws IOException {
        String georgian = "\u10DC\u10D8\u10DC\u10DD";
        Run without = packets(CLUB, HEAD + ALDER.replace("Alder", georgian));
        assertThat(without.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(without.err()).contains("Georgian").contains("name a TrueType font that has it with --font");
        Path font = folder.resolve("own.ttf");
        try (InputStream ttf = getClass().getResourceAsStream("/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf")) {
            Files.copy(ttf, font);
        }
        Run with = packets(CLUB, HEAD + ALDER.replace("Alder", georgian), "--font", font.toString());
        assertThat(with.exit()).as(with.err()).isEqualTo(Exit.DONE);
        assertThat(text("packets/" + georgian + "-s/1-read.pdf")).contains("Show packet for " + georgian + " Sample");
        Run broken = packets(CLUB, HEAD + ALDER, "--font", "README.md");
        assertThat(broken.exit()).isEqualTo(Exit.COULD_NOT_READ_OR_WRITE);
        assertThat(broken.errLines()).singleElement().asString().startsWith("README.md: this is no TrueType font");
    }

    @Test
    void oneMemberCanBePrintedAgainAlone() throws IOException {
        assertThat(packets(CLUB, HEAD + ALDER + BRIAR).exit()).isEqualTo(Exit.DONE);
        Map<String, byte[]> before = Trees.bytes(out());
        Run run = packets(CLUB, HEAD + ALDER + BRIAR.replace("Clover", "Heather"), "--only", "briar sample");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(text("packets/briar-s/1-read.pdf")).contains("My rabbit: Heather");
        Map<String, byte[]> after = Trees.bytes(out());
        assertThat(after.keySet()).containsAll(before.keySet());
        for (String same : List.of("packets/alder-s/1-read.pdf", "print-plan.pdf", "contestants.csv")) {
            assertThat(after.get(same)).as(same).isEqualTo(before.get(same));
        }
    }

    @Test
    void aNameThatNobodyHasIsRefused() throws IOException {
        Run run = packets(CLUB, HEAD + ALDER, "--only", "Nobody");
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.err()).contains("--only Nobody: no member has this name; give the whole name");
        assertThat(out()).doesNotExist();
    }

    @Test
    void onlyPagesThatChangedArePrintedAgain() throws IOException {
        assertThat(packets(CLUB, HEAD + ALDER + BRIAR).exit()).isEqualTo(Exit.DONE);
        Run same = packets(CLUB, HEAD + ALDER + BRIAR, "--today", "2026-07-01");
        assertThat(same.out()).doesNotContain("Printed before and changed since");
        assertThat(files()).noneMatch(name -> name.startsWith("changed/"));
        Run changed = packets(CLUB, HEAD + ALDER.replace("AS1", "AS7") + BRIAR, "--today", "2026-07-02");
        assertThat(changed.out()).contains("Printed before and changed since: 2 files.");
        String list = Files.readString(out().resolve("changed/what-to-print-again.txt"));
        assertThat(list)
                .startsWith("Print these again, version 2 July 2026:")
                .contains("changed/alder-s-1-read.pdf: pages ")
                .contains("alder-s/2-cards.pdf")
                .doesNotContain("briar");
        assertThat(text("changed/alder-s-1-read.pdf")).contains("AS7").contains("version 2 July 2026");
    }

    @Test
    void contestantsKeepTheirNumbersWhenSomeoneJoins() throws IOException {
        assertThat(packets(CLUB, HEAD + BRIAR + ALDER).exit()).isEqualTo(Exit.DONE);
        assertThat(numbers()).containsExactly("1,\"Alder Sample\"", "2,\"Briar Sample\"");
        String joined = ALDER.replace("Alder", "Aspen").replace("AS1", "AS3").replace("Pebble", "Dot");
        assertThat(packets(CLUB, HEAD + joined + BRIAR + ALDER).exit()).isEqualTo(Exit.DONE);
        assertThat(numbers()).containsExactly("1,\"Alder Sample\"", "2,\"Briar Sample\"", "3,\"Aspen Sample\"");
        assertThat(text("packets/aspen-s/1-read.pdf")).contains("Number at the show 3");
    }

    @Test
    void aMemberWhoLeftTakesTheirPacketAlong() throws IOException {
        assertThat(packets(CLUB, HEAD + ALDER + BRIAR).exit()).isEqualTo(Exit.DONE);
        assertThat(packets(CLUB, HEAD + ALDER).exit()).isEqualTo(Exit.DONE);
        assertThat(files()).noneMatch(name -> name.contains("briar"));
        assertThat(out().resolve("packets/briar-s")).doesNotExist();
    }

    @Test
    void aWholeDeckHoldsMoreThanThePlanAndNewCardsFewer() throws IOException {
        // Alder turned eight between the two cut-offs: the youngest division's cards are old for a junior.
        String grown = ALDER.replace("2016-03-14", "2017-03-14");
        packets(CLUB, HEAD + grown);
        int plan = cards("packets/alder-s/2-cards.pdf");
        packets(CLUB, HEAD + grown, "--whole-deck");
        int whole = cards("packets/alder-s/2-cards.pdf");
        packets(CLUB, HEAD + grown, "--new-only");
        int fresh = cards("packets/alder-s/2-cards.pdf");
        assertThat(whole).isGreaterThanOrEqualTo(plan);
        assertThat(fresh).isLessThan(plan);
    }

    @Test
    void bothCardChoicesAtOnceAreRefused() throws IOException {
        Run run = packets(CLUB, HEAD + ALDER, "--whole-deck", "--new-only");
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines()).hasSize(1);
    }

    @Test
    void aLetterTooLongForItsPageRunsOn() throws IOException {
        Run run = packets(CLUB + "\n" + "A long letter. ".repeat(400), HEAD + ALDER);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(text("packets/alder-s/1-read.pdf"))
                .contains("A long letter.")
                .contains("My rabbit: Pebble");
    }

    @Test
    void theLeadersOwnHoldStandsAtTheTurn() throws IOException {
        Run run = packets(
                CLUB.replace("start-date", "grip: an open hand behind the shoulders\nstart-date"), HEAD + ALDER);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(text("packets/alder-s/1-read.pdf")).contains("Our hold: an open hand behind the shoulders.");
    }

    @Test
    void aDoubleClickBesideAClubPrintsItAndLeavesTheProblemsAsText() throws IOException {
        club(CLUB, HEAD + BAD);
        Path jar = Files.writeString(folder.resolve("club/hutchleaf.jar"), "");
        BesideTheJar beside = BesideTheJar.beside(jar).orElseThrow();
        java.io.StringWriter said = new java.io.StringWriter();
        int exit = beside.run(new java.io.PrintWriter(said), new java.io.PrintWriter(said));
        assertThat(exit).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(folder.resolve("club/what-to-mend.txt"))
                .content()
                .startsWith("Please look at these lines.")
                .contains("members.csv:2: ")
                .contains("Dutch");
        assertThat(BesideTheJar.beside(folder.resolve("hutchleaf.jar"))).isEmpty();
    }

    private Run packets(String club, String members, String... more) throws IOException {
        Path written = club(club, members);
        List<String> args = new ArrayList<>(List.of(
                "packets",
                written.toString(),
                "--content",
                tree.toString(),
                "--templates",
                "templates",
                "--out",
                out().toString()));
        args.addAll(Arrays.asList(more));
        if (!args.contains("--today")) {
            args.addAll(List.of("--today", "2026-06-27"));
        }
        return Run.of(args.toArray(String[]::new));
    }

    private Path club(String club, String members) throws IOException {
        Path written = Files.createDirectories(folder.resolve("club"));
        Files.writeString(written.resolve("club.md"), club);
        Files.writeString(written.resolve("members.csv"), members);
        return written;
    }

    private Path out() {
        return folder.resolve("out");
    }

    private List<String> files() throws IOException {
        return List.copyOf(Trees.bytes(out()).keySet());
    }

    private List<String> numbers() throws IOException {
        List<String> lines = Files.readAllLines(out().resolve("contestants.csv"));
        return lines.subList(1, lines.size());
    }

    private String text(String file) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(out().resolve(file)))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }

    /** Cards by their answer sides. */
    private int cards(String file) throws IOException {
        return PdfWords.of(Files.readAllBytes(out().resolve(file)), "answer").size();
    }
}
