package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code hutchleaf cards} from the outside: which cards, in which files, and what is refused. */
final class CardsTest {
    @TempDir
    private Path folder;

    /** Sixteen stops with one core card each, for every level. */
    private Path tree() throws IOException {
        Path tree = folder.resolve("content");
        return Files.exists(tree) ? tree : Trees.small(folder);
    }

    private Run cards(String... more) throws IOException {
        List<String> args =
                new ArrayList<>(List.of("cards", "--content", tree().toString(), "--out", out().toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private Path out() {
        return folder.resolve("out");
    }

    private List<Word> words(String file) throws IOException {
        return PdfWords.of(Files.readAllBytes(out().resolve("cards/flashcards-" + file + ".pdf")));
    }

    private static int pages(List<Word> words) {
        return words.stream().mapToInt(Word::page).max().orElse(0);
    }

    private static List<String> codes(List<Word> words) {
        return words.stream()
                .map(Word::text)
                .filter(text -> text.matches("\\d+\\.\\d+"))
                .distinct()
                .toList();
    }

    private void changeStop(int stop, String what, String to) throws IOException {
        Path file = tree().resolve("routine/stop-" + stop + ".md");
        Files.writeString(file, Files.readString(file).replaceAll(what, to));
    }

    private void longAnswer(int stop, int words) throws IOException {
        changeStop(stop, "An answer\\.", String.join(" ", Collections.nCopies(words, "rabbit")) + ".");
    }

    /** Worked by hand: 16 cards take 4 sheets of 4 for primary and 3 of 6 for the others, each after a first page. */
    @Test
    void everyLevelGetsAFileInItsUsualSize() throws IOException {
        Run run = cards();
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(Files.readAllLines(out().resolve(".made-by-cards")))
                .containsExactly(
                        "cards/flashcards-primary-primary.pdf",
                        "cards/flashcards-junior-standard.pdf",
                        "cards/flashcards-intermediate-standard.pdf",
                        "cards/flashcards-senior-standard.pdf");
        assertThat(pages(words("primary-primary"))).isEqualTo(5);
        assertThat(pages(words("senior-standard"))).isEqualTo(4);
        assertThat(codes(words("junior-standard"))).hasSize(16);
    }

    /** Two sides: a first sheet to try the printer, then 16 cards on 2 sheets of 12 (worked by hand): 3 sheets, 6 pages. */
    @Test
    void twoSidedCardsHaveTheirBacksOnPagesOfTheirOwn() throws IOException {
        Run run = cards("--level", "junior", "--sides", "short-edge", "--turn", "up", "--paper", "a4");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.out()).containsPattern("flashcards-junior-standard-short-edge-flip-up\\.pdf +6 +3 +members");
    }

    @Test
    void namedCardsComeOnAsFewSheetsAsTheyTakeInOrderAndOnce() throws IOException {
        Run run = cards("--cards", "14.1, 3.1,7.1,3.1,1.1,9.1,2.1");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        List<Word> words = words("again-standard");
        assertThat(codes(words)).containsExactlyInAnyOrder("1.1", "2.1", "3.1", "7.1", "9.1", "14.1");
        assertThat(pages(words)).as("six cards fill one sheet").isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "--cards 3.9|--cards 3.9: there is no such card; did you mean 3.1?",
                "--cards 91.1|--cards 91.1: there is no such card; did you mean 1.1?",
                "--cards ears|--cards ears: there is no such card; write the code that stands on the card, for example 1.1",
                "--cards 20.1|--cards 20.1: there is no such card; cards on a member's own rabbit are printed by: hutchleaf packets --only NAME",
                "--cards 1.1 --core|--cards: it names every card that is wanted; leave --topic, --core and --from-level out",
                "--format smal|--format smal: there is no such choice; did you mean 'small'?",
                "--level junir|--level junir: there is no such choice; did you mean 'junior'?",
                "--fold card --sides long-edge|--fold card: cards printed on both sides are not folded; leave it out, or leave --sides out",
                "--topic spare-helth|--topic 'spare-helth': there is no such topic; did you mean 'Spare health'?",
                "--level junior --from-level senior|--from-level senior: junior has no cards that senior had not; ask for an older level",
                "--from-level primary|cards: no card is all that was asked for; ask for less, or for another level",
            })
    void whatCannotBeMeantIsRefusedInOneLine(String asked, String said) throws IOException {
        Run run = cards(asked.split(" ", -1));
        assertThat(run.errLines()).containsExactly(said);
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(out()).doesNotExist();
    }

    @Test
    void aCardOfAnotherLevelIsRefusedByName() throws IOException {
        changeStop(4, "\\{4\\.1 core}", "(from senior) {4.1 core}");
        assertThat(cards("--cards", "4.1", "--level", "junior").errLines())
                .containsExactly("--cards 4.1: junior's deck does not hold it: the card is for senior only;"
                        + " leave --level out");
        assertThat(cards("--cards", "4.1").exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void whatALevelHadAlreadyIsLeftOut() throws IOException {
        changeStop(4, "\\{4\\.1 core}", "(from junior) {4.1 core}");
        Run run = cards("--from-level", "primary");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(codes(words("junior-standard-new-since-primary"))).containsExactly("4.1");
        assertThat(out().resolve("cards/flashcards-primary-primary-new-since-primary.pdf"))
                .doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({"stop 5, stop-5", "routine/stop-5.md, routine-stop-5", "content/routine/stop-5, content-routine-stop-5"
    })
    void aTopicIsFoundByTitleAndByPath(String asked, String slug) throws IOException {
        Run run = cards("--level", "junior", "--topic", asked);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(codes(words("junior-standard-" + slug))).containsExactly("5.1");
    }

    @Test
    void onlyCoreCardsAreLeftWhenTheyAreAskedFor() throws IOException {
        changeStop(6, "\\{6\\.1 core}", "{6.1}");
        Run run = cards("--level", "senior", "--core");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(codes(words("senior-standard-core"))).hasSize(15).doesNotContain("6.1");
    }

    @Test
    void cardsThatASmallCardCannotHoldStandBesideInTheUsualSizeAndAreNamed() throws IOException {
        longAnswer(8, 32);
        Run run = cards("--level", "junior", "--format", "small");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.errLines())
                .containsExactly(
                        "warning: cards/flashcards-junior-small.pdf: a small card cannot hold 1 of its 16 cards:"
                                + " 8.1; print cards/flashcards-junior-small-others.pdf too");
        assertThat(codes(words("junior-small"))).hasSize(15).doesNotContain("8.1");
        assertThat(codes(words("junior-small-others"))).containsExactly("8.1");
    }

    @Test
    void theOthersOfAnEarlierRunGoWhenAllCardsFit() throws IOException {
        longAnswer(8, 32);
        assertThat(cards("--level", "junior", "--format", "small").exit()).isEqualTo(Exit.DONE);
        assertThat(cards("--level", "senior", "--core").exit()).isEqualTo(Exit.DONE);
        changeStop(8, "(rabbit ){10,}", "");
        Run run = cards("--level", "junior", "--format", "small");
        assertThat(run.errLines()).isEmpty();
        assertThat(out().resolve("cards/flashcards-junior-small-others.pdf")).doesNotExist();
        assertThat(Files.readAllLines(out().resolve(".made-by-cards")))
                .containsExactlyInAnyOrder(
                        "cards/flashcards-senior-standard-core.pdf", "cards/flashcards-junior-small.pdf")
                .allSatisfy(name -> assertThat(out().resolve(name)).exists());
    }

    /** The floor: what does not fit at the smallest type is named with file, line and how far it is over. */
    @ParameterizedTest
    @CsvSource({"small, 45, --strict", "standard, 120, --core", "index, 200, --core", "large-print, 120, --core"})
    void belowTheFloorAnErrorNamesTheCard(String format, int words, String more) throws IOException {
        longAnswer(8, words);
        Run run = cards("--level", "junior", "--format", format, more);
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.errLines())
                .satisfiesExactly(
                        line -> assertThat(line)
                                .matches(
                                        "content/routine/stop-8\\.md:\\d+: the answer of card 8\\.1 is \\d+\\.\\d mm too"
                                                + " tall even at its smallest; write it shorter"),
                        line -> assertThat(line).isEqualTo("Nothing was written."));
        assertThat(out()).doesNotExist();
    }

    @Test
    void publishAndCardsKeepTheirFilesApart() throws IOException {
        Run publish = Run.of("publish", "--content", tree().toString(), "--out", out().toString());
        assertThat(publish.exit()).as(publish.err()).isEqualTo(Exit.DONE);
        assertThat(cards("--level", "junior").exit()).isEqualTo(Exit.DONE);
        assertThat(out().resolve("cards/flashcards-junior.pdf")).exists();
        assertThat(out().resolve("cards/flashcards-junior-standard.pdf")).exists();
    }
}
