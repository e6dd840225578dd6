package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One spelling in everything printed. The pairs of British and American forms are those of any dictionary of both, such as
 * Webster's (from memory); the tests take them from the table that a leader may extend.
 */
final class SpellingTest {
    private static final String MEMBERS = """
            name,born,rabbit,breed,colour,sex,rabbit born,ear
            Colour Grey,2015-04-25,Grey Hall,Dutch,black,buck,2025-10-12,GREY1
            Program Gray,2011-04-25,Behavior,Dutch,grey,doe,2025-10-12,FIBRE
            """;

    @TempDir
    private Path folder;

    private static String forms(int column) throws IOException {
        return Files.readAllLines(Path.of("content/words/spelling.md")).stream()
                .filter(line -> line.startsWith("| ") && !line.contains("| us |"))
                .map(line -> line.split(" *\\| *")[column])
                .collect(Collectors.joining("|"));
    }

    /** Words of the other country with what may follow them, however they begin: colours, Coloured, greyish. */
    private static List<String> found(String forms, Map<String, String> texts) {
        Pattern words = Pattern.compile(
                "(?<!\\p{L})(" + forms + ")(s|d|ed|er|ing|ful|less|ly|y|able|al|ish|ite)?(?!\\p{L})",
                Pattern.CASE_INSENSITIVE);
        List<String> found = new ArrayList<>();
        texts.forEach((file, text) -> words.matcher(text)
                .results()
                .map(MatchResult::group)
                .distinct()
                .forEach(word -> found.add(file + ": " + word)));
        return found;
    }

    private static Map<String, String> texts(Path out) throws IOException {
        return Trees.bytes(out).entrySet().stream()
                .filter(file -> file.getKey().endsWith(".pdf"))
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        file -> PdfWords.of(file.getValue()).stream()
                                .map(PdfWords.Word::text)
                                .collect(Collectors.joining(" "))));
    }

    private Path club(String spelling) throws IOException {
        Path club = Files.createDirectories(folder.resolve("club"));
        Files.writeString(club.resolve("members.csv"), MEMBERS);
        Files.writeString(club.resolve("club.md"), """
                ---
                name: Harbour and Harbor Rabbit Club
                show-name: Colour and Color Show
                show-date: 2026-08-08
                rule-set: age in September
                start-date: 2026-06-27
                spelling: %s
                ---
                Dear {member.first name}, my favourite Grey Hall and your favorite Gray Hall.
                """.formatted(spelling));
        return club;
    }

    private Map<String, String> packets(String... arguments) throws IOException {
        Path out = folder.resolve("out");
        List<String> all = new ArrayList<>(List.of(
                "packets", folder.resolve("club").toString(), "--out", out.toString(), "--today", "2026-06-27"));
        all.addAll(List.of(arguments));
        Run run = Run.of(all.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.out())
                .contains("packets/colour-g/", "Colour Grey, junior")
                .doesNotContain("\uE000");
        assertThat(Files.readString(out.resolve("contestants.csv"))).contains("\"Colour Grey\"");
        return texts(out);
    }

    private static String without(String text, String... kept) {
        String left = text;
        for (String words : kept) {
            left = left.replaceAll("(?<!\\p{L})" + Pattern.quote(words) + "(?!\\p{L})", "*");
        }
        return left;
    }

    @Test
    void anAmericanGuideHasNoBritishWordAndSaysThatItIsAmerican() throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of("publish", "--out", out.toString(), "--spelling", "us");

        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        Map<String, String> texts = texts(out);
        assertThat(texts).hasSizeGreaterThan(12);
        assertThat(found(forms(1), texts)).isEmpty();
        assertThat(String.join(" ", texts.values())).contains("color", "Color", "gray", "toward", "practice");
        byte[] guide = Files.readAllBytes(out.resolve("guides/study-guide-junior.pdf"));
        assertThat(PdfUa.violations(guide)).isEmpty();
        try (PDDocument document = Loader.loadPDF(guide)) {
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
        }
    }

    @Test
    void anAmericanPacketKeepsWhatTheClubWrote() throws IOException {
        club("us");
        Map<String, String> texts = packets();

        // A name may break over two lines, so its words are looked for one by one.
        texts.replaceAll((file, text) -> without(text, "Colour", "Grey", "GREY1", "FIBRE", "Harbour", "favourite"));
        assertThat(found(forms(1), texts)).isEmpty();
        assertThat(texts.get("packets/program-g/1-read.pdf")).contains("gray", "Color");
    }

    @Test
    void aNameStaysWhateverIsPrinted() throws IOException {
        club("us");

        assertThat(packets().get("packets/colour-g/1-read.pdf"))
                .contains("Colour Grey", "Grey Hall", "Harbour and Harbor Rabbit Club", "favourite Grey Hall");
        assertThat(packets("--spelling", "uk").get("packets/program-g/1-read.pdf"))
                .contains("Program Gray", "Behavior", "favorite Gray Hall");
    }

    @Test
    void aBritishPacketHasNoAmericanWordOfItsOwn() throws IOException {
        club("us");
        Map<String, String> texts = packets("--spelling", "uk");

        texts.replaceAll((file, text) -> without(text, "Program", "Gray", "Behavior", "Harbor", "Color", "favorite"));
        String twoCountries = "afterward|backward|catalog|draft|inward|learned|outward|practice|story|stories|toward|";
        String american = (forms(2) + "|").replace("|toward|", "|");
        for (String word : twoCountries.split("\\|")) {
            american = ("|" + american).replace("|" + word + "|", "|").substring(1);
        }
        assertThat(found(american.replaceAll("\\|$", ""), texts)).isEmpty();
        assertThat(texts.get("packets/program-g/1-read.pdf")).contains("grey", "Colour");
    }
}
