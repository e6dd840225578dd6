package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The proofreader as a person and as a machine meet it. */
final class ProofTest {
    @TempDir
    private Path folder;

    private Path tree;

    @BeforeEach
    void copyTheCleanTree() throws IOException {
        tree = folder.resolve("content");
        Trees.copy(Path.of("tests/resources/proof-tree"), tree);
    }

    private void spoil() throws IOException {
        Path home = tree.resolve("husbandry/home.md");
        Files.writeString(
                home,
                Files.readString(home).replace("What does a home need?", "Does it need space?")
                        + "\n## More\nWait 90 days.\n");
    }

    @Test
    void ourOwnTreeHasNoErrors() {
        Run run = Run.of("proof", "--ink");
        assertThat(run.out()).contains("0 to mend");
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        assertThat(run.err()).isEmpty();
    }

    @Test
    void anErrorIsShownWithItsLineAndEndsWithOne() throws IOException {
        spoil();
        Run run = Run.of("proof", "--content", tree.toString());
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.out().lines())
                .startsWith(
                        "content/husbandry/home.md:11: card 80.1 'Does it need space?' can be answered with yes or no;"
                                + " ask what, why, how or which",
                        "warning: content/husbandry/home.md:15: the number '90 days' stands in the text; if a source"
                                + " gives it, move it to facts.md and write its {fact.id}",
                        "");
        assertThat(run.out().strip()).endsWith("1 to mend, 1 to look at");
    }

    @Test
    void aWarningAloneEndsWithNought() throws IOException {
        Path home = tree.resolve("husbandry/home.md");
        Files.writeString(home, Files.readString(home) + "\n## More\nWait 90 days.\n");
        assertThat(Run.of("proof", "--content", tree.toString()).exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void theTableTellsWhatEachStopHas() {
        assertThat(Run.of("proof", "--content", tree.toString()).out().lines())
                .contains(
                        "stop                  primary           junior            intermediate      senior",
                        " 1 Carry              stcyf 2/2/1       stcyf 2/2/1 *     stcyf 2/2/1 *     stcyf 2/2/1 *",
                        " 8 Teeth              not shown         stcyf 2/2/1 *     stcyf 2/2/1 *     stcyf 2/2/1 *",
                        "Care                  1 0 1/0/0         1 0 1/0/0         1 0 1/0/0         1 0 1/0/0");
    }

    @Test
    void theKeysForMachinesDoNotChange() throws IOException {
        spoil();
        Run run = Run.of("proof", "--json", "--content", tree.toString());
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(keys(run.out()))
                .containsExactly(
                        "cards",
                        "caution",
                        "coreCards",
                        "daleChall",
                        "ease",
                        "errors",
                        "file",
                        "findings",
                        "grade",
                        "ifYouFindIt",
                        "inShort",
                        "level",
                        "line",
                        "mend",
                        "part",
                        "questions",
                        "reading",
                        "rule",
                        "sayIt",
                        "scored",
                        "severity",
                        "spache",
                        "steps",
                        "stop",
                        "stops",
                        "subject",
                        "subjects",
                        "terms",
                        "topic",
                        "topics",
                        "tradeShare",
                        "warnings",
                        "what",
                        "words",
                        "wordsASentence");
        assertThat(values(run.out(), "rule")).containsExactly("card-yes-no", "truth-number");
        assertThat(values(run.out(), "severity")).containsExactly("error", "warning");
        assertThat(values(run.out(), "line")).containsExactly("11", "15");
    }

    @Test
    void aTreeThatCannotBeReadIsReportedToo() throws IOException {
        Files.delete(tree.resolve("facts.md"));
        Run run = Run.of("proof", "--content", tree.toString());
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.out()).contains("content/facts.md: the file is missing");
    }

    @Test
    void withoutAWordListNothingIsScoredByOne() {
        assertThat(Run.of("proof", "--content", tree.toString()).out().lines())
                .filteredOn(line -> line.startsWith("primary guide"))
                .singleElement()
                .asString()
                .contains("not scored");
    }

    /** 0.121 words a sentence + 0.082 percent unfamiliar + 0.659 (Spache, revised 1974): the list holds every word. */
    @Test
    void aWordListGivesThePrimaryEditionItsSpacheGrade() throws IOException {
        Path list = folder.resolve("list.txt");
        Files.write(list, allWords());
        String scored = row(Run.of("proof", "--content", tree.toString(), "--word-list", list.toString()));
        double sentence = Double.parseDouble(scored.substring(58, 76).strip());
        double spache = Double.parseDouble(scored.substring(94, 112).strip());
        assertThat(spache).isCloseTo(0.121 * sentence + 0.659, org.assertj.core.data.Offset.offset(0.06));
    }

    @Test
    void aListThatIsNotThereIsAWrongArgument() {
        Run run = Run.of("proof", "--word-list", folder.resolve("none.txt").toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.err()).contains("none.txt: there is no such file; name one that is there");
    }

    @Test
    void americanSpellingMayBeAsked() throws IOException {
        Path home = tree.resolve("husbandry/home.md");
        Files.writeString(home, Files.readString(home) + "\n## More\nA gray mat.\n");
        assertThat(Run.of("proof", "--content", tree.toString(), "--spelling", "us")
                        .out())
                .doesNotContain("'gray' is written here")
                .contains("'Colours' is written here; write 'color'");
        assertThat(Run.of("proof", "--content", tree.toString()).out())
                .contains("'gray' is written here; write 'grey'");
    }

    private static String row(Run run) {
        return run.out()
                .lines()
                .filter(line -> line.startsWith("primary guide"))
                .findFirst()
                .orElseThrow();
    }

    private List<String> allWords() throws IOException {
        Set<String> words = new TreeSet<>();
        try (var files = Files.walk(tree)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".md")).toList()) {
                for (String word : Files.readString(file).split("[^A-Za-z']+")) {
                    words.add(word);
                }
            }
        }
        words.remove("");
        return List.copyOf(words);
    }

    private static Set<String> keys(String json) throws IOException {
        Set<String> keys = new TreeSet<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            while (parser.nextToken() != null) {
                if (parser.currentToken() == JsonToken.FIELD_NAME) {
                    keys.add(parser.currentName());
                }
            }
        }
        return keys;
    }

    private static List<String> values(String json, String key) throws IOException {
        List<String> values = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            while (parser.nextToken() != null) {
                if (parser.currentToken() == JsonToken.FIELD_NAME
                        && parser.currentName().equals(key)) {
                    parser.nextToken();
                    values.add(parser.getText());
                }
            }
        }
        return values;
    }
}
