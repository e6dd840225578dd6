package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code hutchleaf publish} from the outside: exit codes, messages, and what it leaves on the disk. */
final class PublishTest {
    private static final String NOTHING = "Nothing was written.";
    private static final String MEND_TEMPLATE =
            "; mend the template, or leave --templates out to use the embedded ones";

    @TempDir
    private Path folder;

    @Test
    void aTreeIsPublishedForAllDivisionsAndEndsWithATable() throws IOException {
        Run run = publish(Trees.small(folder));
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(Trees.bytes(out()).keySet())
                .contains(
                        "guides/study-guide-primary.pdf",
                        "cards/flashcards-junior.pdf",
                        "scoresheets/score-sheet-intermediate.pdf",
                        "scoresheets/questions-senior.pdf")
                .noneMatch(name -> name.endsWith(".part"));
        assertThat(run.out().lines().findFirst())
                .hasValueSatisfying(
                        head -> assertThat(head.split(" +")).containsExactly("file", "pages", "sheets", "for"));
        assertThat(run.out()).contains("guides/study-guide-primary.pdf").contains("in all");
    }

    @Test
    void aSecondRunRemovesOnlyWhatTheFirstOneMade() throws IOException {
        Path tree = Trees.small(folder);
        Path foreign = write(out().resolve("guides/mine.pdf"), "mine");
        Path stale = write(out().resolve("guides/study-guide-novice.pdf"), "stale");
        Path outside = write(folder.resolve("outside.txt"), "outside");
        write(out().resolve(".made-by-publish"), "guides/study-guide-novice.pdf\n../outside.txt\n\n");
        Run run = publish(tree);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(foreign).hasContent("mine");
        assertThat(outside).hasContent("outside");
        assertThat(stale).doesNotExist();
        List<String> made = Files.readAllLines(out().resolve(".made-by-publish"));
        assertThat(made)
                .doesNotContain("guides/study-guide-novice.pdf", "guides/mine.pdf")
                .allSatisfy(name -> assertThat(out().resolve(name)).exists());
    }

    @Test
    void aFigureToLeaveOutThatIsNotThereIsRefused() throws IOException {
        Run run = Run.of(
                "publish",
                "--content",
                Trees.small(folder).toString(),
                "--out",
                out().toString(),
                "--leave-out",
                "figures/x.svg");
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.err())
                .contains("--leave-out figures/x.svg: there is no such figure")
                .contains(NOTHING);
    }

    @Test
    void anAuthorsMistakesAreAllShownSortedAndNothingIsTouched() throws IOException {
        Path tree = Trees.small(folder);
        Map<String, byte[]> before = earlierRun();
        Path second = tree.resolve("routine/stop-2.md");
        Files.writeString(second, Files.readString(second).replace("\nAn answer.\n", "\n"));
        Path tenth = tree.resolve("routine/stop-10.md");
        Files.writeString(tenth, Files.readString(tenth).replace("level: primary", "level: primry"));
        Run run = publish(tree);
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.errLines())
                .containsExactly(
                        "content/routine/stop-10.md:4: unknown level 'primry'; did you mean 'primary'?",
                        "content/routine/stop-2.md:21: card 2.1 'What is card one of stop 2?' has no answer;"
                                + " write it under the heading",
                        NOTHING);
        assertThat(run.out()).isEmpty();
        assertUntouched(before);
    }

    @Test
    void anOverfullStopPageNamesItsFileAndHowFarItIsOver() throws IOException {
        Path tree = Trees.whole(folder);
        Map<String, byte[]> before = earlierRun();
        Path carry = tree.resolve("routine/carry.md");
        String steps = IntStream.rangeClosed(1, 40)
                .mapToObj(no -> no + ". Hold the rabbit close and walk on.\n")
                .reduce("## Steps (junior only)\n", String::concat);
        Files.writeString(
                carry, Files.readString(carry).replaceFirst("(?s)## Steps \\(junior only\\)\n.*?\n(?=\n)", steps));
        Run run = publish(tree);
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.errLines())
                .filteredOn(line -> !line.startsWith("warning: "))
                .satisfiesExactly(
                        line -> assertThat(line)
                                .matches("content/routine/carry\\.md:1: the left page of stop 1 for junior is"
                                        + " \\d+\\.\\d mm too tall even at its smallest; write it shorter"),
                        line -> assertThat(line).isEqualTo(NOTHING));
        assertUntouched(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "${undefinedName}|The following has evaluated to null or missing: undefinedName",
                "${\"freemarker.template.utility.Execute\"?new()(\"id\")}|Instantiating freemarker.template.utility.Execute is not allowed in the template for security reasons",
                "<#include \"../../outside.ftl\">|Template inclusion failed (for parameter value \"../../outside.ftl\")",
                "<#include \"linked.ftl\">|Template inclusion failed (for parameter value \"linked.ftl\")",
                "${title?api.class}|Can't use ?api, because the \"api_builtin_enabled\" configuration setting is false. Think twice before you set it to true though. Especially, it shouldn't abused for modifying Map-s and Collection-s",
                "<#if>|#if is an existing directive, but the tag is malformed.  (See FreeMarker Manual / Directive Reference.)",
            })
    void aHostileTemplateIsRefusedWithItsLine(String attack, String what) throws IOException {
        Path templates = Trees.templates(folder);
        Path outside = write(folder.resolve("outside.ftl"), "the secret");
        Files.createSymbolicLink(templates.resolve("linked.ftl"), outside);
        assertRefused(templates, attack, "templates/went-well.ftl:1: the template stops: " + what + MEND_TEMPLATE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "<img src=\"https://example.org/a.png\" alt=\"\"/>|'https://example.org/a.png' is not a figure; write hutch:figures/NAME.svg",
                "<img src=\"file:///etc/passwd\" alt=\"\"/>|'file:///etc/passwd' is not a figure; write hutch:figures/NAME.svg",
                "<p style=\"background:url(https://example.org/a.png)\">x</p>|the style reaches for 'https://example.org/a.png'; draw figures with <img> and load nothing",
            })
    void aTemplateThatReachesOutIsRefused(String attack, String said) throws IOException {
        Path templates = Trees.templates(folder);
        Path slip = templates.resolve("went-well.ftl");
        Files.writeString(slip, Files.readString(slip).replace("<body>", "<body>" + attack));
        Run run = publish(Trees.small(folder), "--templates", templates.toString());
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.errLines()).containsExactly("templates/went-well.ftl: " + said, NOTHING);
        assertThat(out()).doesNotExist();
    }

    @Test
    void aMissingTemplateIsNamed() throws IOException {
        Path templates = Trees.templates(folder);
        Files.delete(templates.resolve("went-well.ftl"));
        Run run = publish(Trees.small(folder), "--templates", templates.toString());
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(run.errLines())
                .containsExactly(
                        "templates/went-well.ftl: there is no such template; put it back or use the embedded ones",
                        NOTHING);
    }

    @Test
    void anUnknownOptionIsAWrongArgumentAndIsNamed() {
        Run run = Run.of("publish", "--papr", "a4");
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.err()).contains("--papr").contains("--paper");
    }

    @Test
    void anUnknownPaperIsAWrongArgumentAndTheRightOnesAreShown() {
        Run run = Run.of("publish", "--paper", "a5");
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.err()).contains("a5").containsIgnoringCase("letter").containsIgnoringCase("a4");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--content", "--templates"})
    void aFolderThatIsNotThereIsAWrongArgument(String option) {
        Path missing = folder.resolve("missing");
        Run run = Run.of("publish", option, missing.toString(), "--out", out().toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines()).containsExactly(missing + ": there is no such folder; name one that is there");
        assertThat(out()).doesNotExist();
    }

    @Test
    void anOutThatIsAFileCannotBeWrittenAndStaysAsItWas() throws IOException {
        Path tree = Trees.small(folder);
        write(out(), "a file");
        Run run = publish(tree);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.COULD_NOT_READ_OR_WRITE);
        assertThat(run.err()).startsWith("could not write into " + out());
        assertThat(out()).hasContent("a file");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "publish", "packets", "cards", "scoresheets", "booklet", "ruler"})
    void helpShowsAnExampleWhoseArgumentsParse(String command) {
        Run help = command.isEmpty() ? Run.of("--help") : Run.of(command, "--help");
        assertThat(help.exit()).isEqualTo(Exit.DONE);
        List<String> lines = help.out().lines().map(String::strip).toList();
        assertThat(lines).contains("Example:");
        List<String> words = List.of(lines.get(lines.indexOf("Example:") + 1).split(" "));
        assertThat(words.get(0)).isEqualTo("hutchleaf");
        // --help at the end stops the work, not the parsing of what stands before it.
        List<String> asked = new ArrayList<>(words.subList(1, words.size()));
        asked.add("--help");
        Run example = Run.of(asked.toArray(String[]::new));
        assertThat(example.exit()).as(example.err()).isEqualTo(Exit.DONE);
        assertThat(example.err()).isEmpty();
    }

    private void assertRefused(Path templates, String firstLine, String said) throws IOException {
        Path slip = templates.resolve("went-well.ftl");
        Files.writeString(slip, firstLine + "\n" + Files.readString(slip));
        Run run = publish(Trees.small(folder), "--templates", templates.toString());
        assertThat(run.errLines()).containsExactly(said, NOTHING);
        assertThat(run.exit()).isEqualTo(Exit.CONTENT_TO_MEND);
        assertThat(out()).doesNotExist();
    }

    private Path out() {
        return folder.resolve("out");
    }

    private Run publish(Path tree, String... more) {
        List<String> args =
                new ArrayList<>(List.of("publish", "--content", tree.toString(), "--out", out().toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    /** What an earlier run left: a finished file and the note of it. */
    private Map<String, byte[]> earlierRun() throws IOException {
        write(out().resolve("guides/study-guide-primary.pdf"), "finished");
        write(out().resolve(".made-by-publish"), "guides/study-guide-primary.pdf\n");
        return Trees.bytes(out());
    }

    private void assertUntouched(Map<String, byte[]> before) throws IOException {
        Map<String, byte[]> after = Trees.bytes(out());
        assertThat(after.keySet()).isEqualTo(before.keySet());
        before.forEach((name, bytes) -> assertThat(after.get(name)).as(name).isEqualTo(bytes));
    }

    private static Path write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }
}
