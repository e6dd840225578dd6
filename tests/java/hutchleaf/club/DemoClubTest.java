package hutchleaf.club;

import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.model.Member;
import hutchleaf.model.Rabbit;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo club: every kind of member that packets are made for, and not one problem. */
final class DemoClubTest {
    private static final Path DEMO = Path.of("src/main/resources/demo-club");
    private static final Folder.Read READ = Folder.read(DEMO, "demo-club", Folder.TODAY);

    @Test
    void itReadsWithoutAProblem() {
        assertThat(READ.problems()).isEmpty();
        assertThat(READ.bad()).isEmpty();
    }

    @Test
    void itHasFourteenMembersFifteenRabbitsAndFourDivisions() {
        assertThat(READ.members()).hasSize(14);
        assertThat(READ.members().stream()
                        .mapToInt(member -> member.rabbits().size())
                        .sum())
                .isEqualTo(15);
        assertThat(READ.members().stream()
                        .map(member -> member.division().level())
                        .distinct())
                .containsExactly(Level.values());
    }

    @Test
    void itHasSiblingsAMemberWithTwoRabbitsAndASeniorWhoStartsLate() {
        assertThat(READ.members().stream()
                        .collect(groupingBy(
                                member -> member.name().substring(member.name().lastIndexOf(' ') + 1)))
                        .values())
                .filteredOn(family -> family.size() > 1)
                .singleElement()
                .satisfies(family ->
                        assertThat(family.stream().map(Member::firstName)).containsExactly("Juniper", "Rowan"));
        assertThat(READ.members())
                .filteredOn(member -> member.rabbits().size() > 1)
                .singleElement()
                .satisfies(member ->
                        assertThat(member.rabbits().stream().map(Rabbit::name)).containsExactly("Alba", "Pip"));
        assertThat(READ.members())
                .filteredOn(member -> member.study() != member.division().level())
                .singleElement()
                .satisfies(member -> {
                    assertThat(member.name()).isEqualTo("Kit Ravensmoor");
                    assertThat(member.firstYear()).isTrue();
                    assertThat(member.division().level()).isEqualTo(Level.SENIOR);
                    assertThat(member.study()).isEqualTo(Level.INTERMEDIATE);
                });
    }

    /** Worked by hand from the birth dates: the age on 1 September 2025, the band it is in, the age on 8 August 2026. */
    @ParameterizedTest
    @CsvSource({
        "Fern Quillby, 5, Youngest, 6",
        "Wren Tallow, 6, Youngest, 7",
        "Otis Marl, 7, Youngest, 8",
        "Juniper Hale, 8, Junior, 9",
        "Silas Penrow, 8, Junior, 9",
        "Tamsin Ord, 10, Junior, 11",
        "Rowan Hale, 10, Junior, 11",
        "Ezra Fennimore, 11, Intermediate, 12",
        "Maren Sollis, 12, Intermediate, 13",
        "Zoë Calloway, 13, Intermediate, 14",
        "Kit Ravensmoor, 16, Senior, 16",
        "Ansel Varga-Wicke, 15, Senior, 16",
        "Isolde Brannock, 17, Senior, 18",
        "Deja Lowmarsh, 17, Senior, 18"
    })
    void everyMembersDivisionIsTheOneWorkedByHand(String name, int counted, String division, int atTheShow) {
        Member member = READ.members().stream()
                .filter(other -> other.name().equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(member.division().name()).isEqualTo(division);
        assertThat(member.division().why()).isEqualTo(counted + " years old on 1 September 2025");
        assertThat(member.division().competes()).isEqualTo(!division.equals("Youngest"));
        assertThat(member.division().age()).contains(atTheShow);
    }

    @Test
    void itsCoatsAreSaidAloud() {
        assertThat(READ.members().stream()
                        .flatMap(member -> member.rabbits().stream())
                        .map(rabbit -> rabbit.breedName() + ": " + rabbit.coat().variety()))
                .containsExactly(
                        "Mini Lop: broken chestnut agouti",
                        "Polish: ruby-eyed white",
                        "Dutch: black",
                        "Havana: chocolate",
                        "Lionhead: black tortoise",
                        "Tan: black tan",
                        "Himalayan: pointed white with black points",
                        "Rex: castor",
                        "New Zealand: ruby-eyed white",
                        "Californian: pointed white with black points",
                        "English Angora: blue",
                        "Satin: copper",
                        "Flemish Giant: fawn",
                        "Belgian Hare: chestnut agouti",
                        "Silver Fox: black");
    }

    /** The rabbit is never he or she, nobody lifts by ears or skin, and no medicine is named. */
    @Test
    void itsLetterIsKindAndSafe() throws IOException {
        assertThat(Files.readString(DEMO.resolve("club.md")))
                .contains("soft toy first", "Stop when it has had enough", "not well")
                .doesNotContainPattern("(?i)\\b(he|she|his|her|scruff|medicine|dose)\\b");
    }

    @Test
    void aFolderInsideAZipFileReadsAsWell(@TempDir Path temp) throws IOException {
        URI zip = URI.create("jar:" + temp.resolve("clubs.zip").toUri());
        try (FileSystem files = FileSystems.newFileSystem(zip, Map.of("create", "true"))) {
            Path folder = Files.createDirectory(files.getPath("/demo-club"));
            for (String file : List.of("club.md", "members.csv")) {
                Files.write(folder.resolve(file), Files.readAllBytes(DEMO.resolve(file)));
            }
            Folder.Read read = Folder.read(folder, "demo-club", Folder.TODAY);
            assertThat(read.problems()).isEmpty();
            assertThat(read.roster()).isEqualTo(READ.roster());
        }
    }
}
