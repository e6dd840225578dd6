package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.PdfFonts;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Packets of members whose rows name a setting or an accommodation, on a small tree. */
final class PacketSettingTest {
    private static final String HEAD =
            "member_name,birth_date,rabbit_name,breed,colour,sex,rabbit_birth_date,ear_number,setting,accommodation\n";
    private static final String ALDER = "Alder Sample,2016-03-14,Pebble,Dutch,black,buck,2026-01-05,AS1,";
    private static final String BRIAR = "Briar Sample,2016-05-20,Clover,Rex,castor,doe,2025-10-01,BS1,";
    private static final String CEDAR = "Cedar Sample,2016-06-20,Moss,Dutch,blue,doe,2025-10-01,CS1,";
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
    private Path folder = Path.of("");

    private Run packets(String members, String... more) throws IOException {
        Path club = Files.createDirectories(folder.resolve("club"));
        Files.writeString(club.resolve("club.md"), CLUB);
        Files.writeString(club.resolve("members.csv"), members);
        List<String> args = new ArrayList<>(List.of("packets", club.toString(), "--templates", "templates"));
        args.addAll(List.of("--content", Trees.small(folder).toString(), "--out", out().toString()));
        args.addAll(List.of("--today", "2026-06-27"));
        args.addAll(Arrays.asList(more));
        return Run.of(args.toArray(String[]::new));
    }

    private Path out() {
        return folder.resolve("out");
    }

    private byte[] bytes(String file) throws IOException {
        return Files.readAllBytes(out().resolve("packets").resolve(file));
    }

    private static double least(byte[] pdf) {
        return PdfWords.of(pdf).stream().mapToDouble(Word::size).min().orElseThrow();
    }

    private static String text(byte[] pdf) {
        return PdfWords.of(pdf).stream()
                .map(Word::text)
                .collect(Collectors.joining(" "))
                .replaceAll("[\\s\u00A0]+", " ");
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static boolean slanted(byte[] pdf) {
        return PdfFonts.of(pdf).stream().anyMatch(font -> font.contains("Italic"));
    }

    /** 18 pt is large print: American Printing House for the Blind (Kitchel). No italics: British Dyslexia Association, from memory. */
    @Test
    void eachMemberGetsTheirOwnSettingAndNobodyAnothers() throws IOException {
        Run run = packets(HEAD + ALDER + ",\n" + BRIAR + "large print,\n" + CEDAR + "easy read,\n");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        for (String file : List.of("1-read.pdf", "2-cards.pdf", "3-sheets.pdf")) {
            assertThat(least(bytes("briar-s/" + file))).as(file).isGreaterThanOrEqualTo(18);
            assertThat(least(bytes("alder-s/" + file))).as(file).isLessThan(18);
            assertThat(slanted(bytes("cedar-s/" + file))).as(file).isFalse();
            assertThat(PdfUa.violations(bytes("briar-s/" + file))).as(file).isEmpty();
            assertThat(PdfUa.violations(bytes("cedar-s/" + file))).as(file).isEmpty();
        }
        assertThat(text(bytes("briar-s/1-read.pdf")))
                .contains(
                        "Show packet for Briar Sample",
                        "My rabbit: Clover",
                        "My routine",
                        "Show-day checklist",
                        "Stop rule.");
    }

    @Test
    void theOptionIsForAllWhoseRowNamesNone() throws IOException {
        Run run = packets(HEAD + ALDER + ",\n" + CEDAR + "easy read,\n", "--large-print");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(least(bytes("alder-s/1-read.pdf"))).isGreaterThanOrEqualTo(18);
        assertThat(least(bytes("any-rabbit-junior/1-read.pdf"))).isGreaterThanOrEqualTo(18);
        assertThat(least(bytes("cedar-s/1-read.pdf"))).isLessThan(18);
    }

    @Test
    void twoSettingsAtOnceAreRefused() throws IOException {
        Run run = packets(HEAD + ALDER + ",\n", "--large-print", "--easy-read");
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines()).hasSize(1);
    }

    @Test
    void accommodationsArePrintedForWhomTheyAreMeantWithTheWordsOfTheirRabbit() throws IOException {
        Run run = packets(
                HEAD + ALDER + ",\"talk through, cue card\"\n" + BRIAR + "large print,cue card\n" + CEDAR + ",\n");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(text(bytes("alder-s/5-talk-through.pdf")))
                .contains("Alder Sample")
                .contains("Feet down, please");
        assertThat(text(bytes("briar-s/6-cue-card.pdf")))
                .contains("Briar Sample")
                .contains("ears, number");
        assertThat(pages(bytes("briar-s/6-cue-card.pdf"))).isEqualTo(1);
        assertThat(PdfUa.violations(bytes("alder-s/5-talk-through.pdf"))).isEmpty();
        assertThat(PdfUa.violations(bytes("briar-s/6-cue-card.pdf"))).isEmpty();
        assertThat(Trees.bytes(out()).keySet())
                .contains("packets/alder-s/6-cue-card.pdf")
                .doesNotContain("packets/briar-s/5-talk-through.pdf", "packets/cedar-s/5-talk-through.pdf");
    }

    /** Counted from the files themselves: the reading pages are printed on both sides. */
    @Test
    void thePlanCountsTheSheetsOfEverySetting() throws IOException {
        Run run = packets(HEAD + ALDER + ",talk through\n" + BRIAR + "large print,cue card\n" + CEDAR + "easy read,\n");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        int pages = 0;
        int sheets = 0;
        for (Map.Entry<String, byte[]> file : Trees.bytes(out()).entrySet()) {
            if (file.getKey().startsWith("packets/")) {
                int all = pages(file.getValue());
                pages += all;
                sheets += file.getKey().endsWith("1-read.pdf") ? (all + 1) / 2 : all;
            }
        }
        assertThat(run.out()
                        .lines()
                        .filter(line -> line.startsWith("in all"))
                        .findFirst()
                        .orElseThrow())
                .matches("in all\\s+" + pages + "\\s+" + sheets + "\\s*");
        String plan = text(Files.readAllBytes(out().resolve("print-plan.pdf")));
        assertThat(plan)
                .contains("1-read, junior, large print")
                .contains("2-cards, junior, large print")
                .contains("1-read, junior, easy read")
                .contains("5-talk-through, junior")
                .contains("6-cue-card, junior, large print");
    }
}
