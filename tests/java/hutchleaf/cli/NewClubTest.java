package hutchleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.club.ClubReader;
import hutchleaf.club.Roster;
import hutchleaf.contest.Samples;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.Library;
import hutchleaf.model.Member;
import hutchleaf.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code hutchleaf new-club} from the outside: what it writes can be read at once, and nothing is overwritten. */
final class NewClubTest {
    private static final Library LIBRARY = Samples.library();

    @TempDir
    private Path temp = Path.of("");

    private Path folder() {
        return temp.resolve("our-club");
    }

    private Roster read(LocalDate today) {
        Problems problems = new Problems();
        Roster roster = ClubReader.read(folder(), "our-club", LIBRARY, today, problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
        assertThat(problems.sorted()).isEmpty();
        assertThat(roster.bad()).isEmpty();
        return roster;
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-06-27", "2026-02-28", "2028-02-29", "2031-07-07", "2026-11-10"})
    void theFolderReadsWithoutAProblemOnAnyDay(LocalDate today) {
        Run run = Run.of("new-club", folder().toString(), "--today", today.toString());
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.out())
                .isEqualToNormalizingNewlines("Wrote " + folder().resolve("club.md") + " and "
                        + folder().resolve("members.csv") + ". Open both and write your own club in.\n");
        assertThat(read(today).members().stream().map(Member::name)).containsExactly("Alder Sample", "Briar Sample");
    }

    @Test
    void everyRowThatIsOnlyAnExampleReadsToo() throws IOException {
        Run.of("new-club", folder().toString(), "--today", "2026-06-27");
        Path members = folder().resolve("members.csv");
        Files.writeString(members, Files.readString(members).replace("# Alder", "Alder"));
        assertThat(read(LocalDate.of(2026, 6, 27)).members().get(0).rabbits()).hasSize(2);
    }

    @Test
    void everyLineOfClubMdThatIsOnlyAnExampleReadsToo() throws IOException {
        Run.of("new-club", folder().toString(), "--today", "2026-06-27");
        Path club = folder().resolve("club.md");
        String used = Files.readString(club)
                .replaceAll("(?m)^# (?=[a-z]+(?:-[a-z]+)*: )", "")
                .replace("date-form: month/day/year\n", "date-form: iso\n");
        Files.writeString(club, used);
        Roster roster = read(LocalDate.of(2026, 6, 27));
        assertThat(roster.club().show().name()).isEqualTo("Summer Show");
        assertThat(roster.club().practice().restDays()).hasSize(2);
        assertThat(roster.club().practice().grip()).startsWith("one open hand");
    }

    @Test
    void theNotesNameEveryRuleSet() throws IOException {
        Run.of("new-club", folder().toString());
        assertThat(Files.readString(folder().resolve("club.md")))
                .contains(LIBRARY.contest().divisions().stream()
                        .map(DivisionRule::ruleSet)
                        .distinct()
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"club.md", "members.csv"})
    void aFileThatIsThereIsNotOverwritten(String name) throws IOException {
        Path mine = Files.createDirectories(folder()).resolve(name);
        Files.writeString(mine, "mine");
        Run run = Run.of("new-club", folder().toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines())
                .containsExactly(mine + ": it is there already, and nothing was written; name another folder");
        try (Stream<Path> files = Files.list(folder())) {
            assertThat(files).containsExactly(mine);
        }
        assertThat(mine).hasContent("mine");
    }

    @Test
    void aFileInTheFoldersPlaceIsNotOverwritten() throws IOException {
        Files.writeString(folder(), "mine");
        Run run = Run.of("new-club", folder().toString());
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines())
                .containsExactly(folder() + ": it is there already, and nothing was written; name another folder");
    }

    @Test
    void aFolderHasToBeNamed() {
        Run run = Run.of("new-club");
        assertThat(run.exit()).isEqualTo(Exit.WRONG_ARGUMENTS);
        assertThat(run.errLines()).first().isEqualTo("Missing required parameter: 'FOLDER'");
    }

    @Test
    void itsHelpHasTheExampleThatTheTestsRun() {
        assertThat(Run.of("new-club", "--help").out().lines()).contains("  hutchleaf new-club our-club");
    }
}
