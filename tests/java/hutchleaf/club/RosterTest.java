package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.model.Level;
import hutchleaf.model.Member;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code members.csv}: what is read from it, and every mistake with its line. */
final class RosterTest {
    private static final String ROW = "Fern Quillby,2016-04-25,Biscuit,Dutch,black,doe,2025-10-01,0042";

    @TempDir
    private Path temp = Path.of("");

    private Folder.Read read(String... changes) {
        return new Folder(temp).members(Folder.rows(changes));
    }

    private Rabbit rabbit(String change) {
        Folder.Read read = read(change);
        assertThat(read.bad()).isEmpty();
        return read.only().rabbits().get(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "member_name,birth_date,rabbit_name,breed,colour,sex,rabbit_birth_date,ear_number",
                "Name,DOB,Rabbit,Breed,Color,Gender,Rabbit DOB,Tattoo",
                "MEMBER NAME,Date of Birth,Rabbit Name,BREED,Variety,Sex,Rabbit birth-date,Ear #",
                "member,birthdate,rabbit,breed,colour,sex,rabbit birthday,ear no."
            })
    void theHeadMayBeWrittenInManyWays(String head) {
        Folder.Read read = new Folder(temp).members(head + "\n" + ROW + "\n");
        assertThat(read.problems()).isEmpty();
        assertThat(read.only().name()).isEqualTo("Fern Quillby");
        assertThat(read.only().rabbits().get(0).earNumber()).isEqualTo("0042");
    }

    @Test
    void columnsMayStandInAnyOrder() {
        Folder.Read read = new Folder(temp).members("""
                        ear,sex,name,rabbit,born,breed,colour,rabbit born
                        0042,b,Fern Quillby,Biscuit,2016-04-25,Dutch,black,2025-10-01
                        """);
        assertThat(read.only().rabbits().get(0).sex()).isEqualTo(Sex.BUCK);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0042", "1E5", "TRUE", "3-4", "1/2", "007.50"})
    void anEarNumberStaysTheTextThatItIs(String ear) {
        assertThat(rabbit("ear_number=" + ear).earNumber()).isEqualTo(ear);
    }

    @ParameterizedTest
    @CsvSource({"buck, BUCK", "Doe, DOE", "male, BUCK", "FEMALE, DOE", "m, BUCK", "f, DOE", "B, BUCK", "d, DOE"})
    void aSexIsReadInAnyOfItsWords(String written, Sex sex) {
        assertThat(rabbit("sex=" + written).sex()).isEqualTo(sex);
    }

    @ParameterizedTest
    @CsvSource({"yes, true", "Y, true", "TRUE, true", "1, true", "no, false", "n, false", "false, false", "0, false"})
    void theFirstYearIsReadInAnyOfItsWords(String written, boolean first) {
        assertThat(read("first_year_with_rabbits=" + written).only().firstYear())
                .isEqualTo(first);
    }

    @ParameterizedTest
    @CsvSource({
        "K, 0, Primary",
        "kindergarten, 0, Primary",
        "3, 3, Junior",
        "3rd, 3, Junior",
        "Grade 7, 7, Intermediate"
    })
    void aGradeIsReadInAnyOfItsForms(String written, int grade, String division) {
        Member member = new Folder(temp)
                .club(Folder.CLUB.replace("age in September", "grade in January\ncut-off: 2026-01-01"))
                .members(Folder.rows("birth_date=; grade=" + written))
                .only();
        assertThat(member.division().name()).isEqualTo(division);
        assertThat(member.division().why()).contains(grade == 0 ? "kindergarten" : "grade " + grade);
        assertThat(member.born()).isEmpty();
        assertThat(member.division().age()).isEmpty();
    }

    /** The international pound of 1959 is 0.45359237 kg, and has 16 ounces. */
    @ParameterizedTest
    @CsvSource({"4.5, 4.5, 4.5 lb", "4.5 lb, 4.5, 4.5 lb", "4 lb 8 oz, 4.5, 4 lb 8 oz", "2 kg, 4.40925, 2 kg"})
    void aWeightIsReadInPoundsOrInTheUnitItNames(String written, double pounds, String asWritten) {
        assertThat(rabbit("weight_lb=" + written).weight()).hasValueSatisfying(weight -> {
            assertThat(weight.pounds()).isCloseTo(pounds, within(0.00001));
            assertThat(weight.asWritten()).isEqualTo(asWritten);
        });
    }

    @Test
    void aColumnInKilogramsIsReadInKilograms() {
        Folder.Read read = new Folder(temp).members(Folder.rows("weight_lb=2").replace("weight_lb", "Weight (kg)"));
        assertThat(read.only().rabbits().get(0).weight().orElseThrow().asWritten())
                .isEqualTo("2 kg");
    }

    @Test
    void aMemberWithTwoRabbitsShowsTheFirst() {
        Member member = read("years_in_club=2", "rabbit_name=Pip; ear_number=QB2; study_level=primary")
                .only();
        assertThat(member.rabbits().stream().map(Rabbit::name)).containsExactly("Biscuit", "Pip");
        assertThat(member.at().line()).isEqualTo(2);
        assertThat(member.years()).contains(2);
        assertThat(member.study()).isEqualTo(Level.PRIMARY);
    }

    @Test
    void namesAreTidiedAndMultiLineCellsKeepTheirLines() {
        Folder.Read read = new Folder(temp)
                .members(Folder.rows(
                        "member_name=  Fern\u00A0 Quillby, \r\n the elder ",
                        "member_name=Wren; rabbit_name=Bun \"\"Bun\"\", x; ear_number=QB2",
                        "member_name=Otis; ear_number=QB3; sex=x"));
        assertThat(read.members().stream().map(Member::name)).containsExactly("Fern Quillby, the elder", "Wren");
        assertThat(read.members().get(1).rabbits().get(0).name()).isEqualTo("Bun \"Bun\", x");
        assertThat(read.members().get(1).at().line()).isEqualTo(4);
        assertThat(read.bad()).containsExactly("club/members.csv:5: 'sex' is 'x'; write buck or doe");
    }

    @Test
    void notesBlankLinesAndEmptyRowsCountForNothing() {
        String[] lines =
                Folder.rows("", "member_name=Wren; ear_number=QB2; sex=x").split("\n");
        Folder.Read read = new Folder(temp)
                .members("# a note, with \"quotes\n\n" + lines[0] + "\n,,,,\n# more\n" + lines[1] + "\n   \n"
                        + lines[2]);
        assertThat(read.members()).hasSize(1);
        assertThat(read.only().at().line()).isEqualTo(6);
        assertThat(read.bad()).containsExactly("club/members.csv:8: 'sex' is 'x'; write buck or doe");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "member_name= | no 'member_name' in this row; fill the cell",
                "rabbit_name= | no 'rabbit_name' in this row; fill the cell",
                "breed= | no 'breed' in this row; fill the cell",
                "colour= | no 'colour' in this row; fill the cell",
                "sex= | no 'sex' in this row; fill the cell",
                "rabbit_birth_date= | no 'rabbit_birth_date' in this row; fill the cell",
                "ear_number= | no 'ear_number' in this row; fill the cell",
                "birth_date= | no 'birth_date' in this row; fill the cell",
                "breed=Duch | unknown breed 'Duch'; did you mean 'Dutch'?",
                "colour=blak | unknown colour 'blak' for a Dutch; did you mean 'black'?",
                "birth_date=03/04/2015 | cannot read the date '03/04/2015' in 'birth_date': it may mean 2015-03-04 or 2015-04-03;"
                        + " write it in one of these ways, or set date-form in club.md to month/day/year or day/month/year",
                "birth_date=2027-01-01 | 'birth_date' is 1 January 2027, after today; look at the year",
                "rabbit_birth_date=2026-07-01 | 'rabbit_birth_date' is 1 July 2026, after today; look at the year",
                "sex=cow | 'sex' is 'cow'; write buck or doe",
                "weight_lb=heavy | 'weight_lb' is 'heavy'; write a number, for example 4.5, or leave the cell empty",
                "weight_lb=4,5 | 'weight_lb' is '4,5'; write it with a point: 4.5",
                "weight_lb=450 | 'weight_lb' is '450'; no rabbit on a show table weighs 450 lb: look at the unit",
                "study_level=senoir | 'study_level' is 'senoir'; did you mean 'senior'?",
                "years_in_club=many | 'years_in_club' is 'many'; write a whole number from 1 to 20",
                "years_in_club=0 | 'years_in_club' is '0'; write a whole number from 1 to 20",
                "first_year_with_rabbits=maybe | 'first_year_with_rabbits' is 'maybe'; write yes or no",
                "grade=13 | 'grade' is '13'; write a school grade from 0, which is kindergarten, to 12"
            })
    void aMistakeInACellIsToldWithItsLineAndCostsOnlyThatRow(String change, String message) {
        Folder.Read read = read("member_name=Wren Tallow; ear_number=QB2", change);
        assertThat(read.bad()).containsExactly("club/members.csv:3: " + message);
        assertThat(read.problems()).isEmpty();
        assertThat(read.members().stream().map(Member::name)).containsExactly("Wren Tallow");
    }

    @Test
    void allMistakesOfARowAreToldAtOnce() {
        assertThat(read("breed=Duch; sex=cow; birth_date=2025-01-01").bad())
                .containsExactly(
                        "club/members.csv:2: 'sex' is 'cow'; write buck or doe",
                        "club/members.csv:2: 0 years old on 1 September 2025: outside every division of 'age in September'"
                                + " (Youngest age 5 to 7, Junior age 8 to 10, Intermediate age 11 to 13, Senior age 14 to 18);"
                                + " look at the row, and at rule-set and cut-off in club.md",
                        "club/members.csv:2: unknown breed 'Duch'; did you mean 'Dutch'?",
                        "warning: club/members.csv:2: the member is 1 year old on the show day; look at the year of"
                                + " 'birth_date'");
    }

    @Test
    void aRabbitThatIsBornAfterTheShowIsRefused() {
        Folder.Read read = new Folder(temp)
                .club(Folder.CLUB.replace("2026-08-08", "2026-05-08"))
                .members(Folder.rows("rabbit_birth_date=2026-05-09"));
        assertThat(read.bad())
                .containsExactly("club/members.csv:2: 'Biscuit' is not born yet on the show day, 8 May 2026; look at"
                        + " 'rabbit_birth_date', and at show-date in club.md");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rabbit_name=Pip; ear_number=QB2; birth_date=2016-04-26 | 'Fern Quillby' has another birth date or grade in line 2;"
                        + " if they are two people, add an initial to both names; if not, mend one row",
                "birth_date=2016-04-25 | this row says the same rabbit of the same member as line 2; take one of the two rows out",
                "rabbit_name=Pip; ear_number=QB2; study_level=primary | 'study_level' of 'Fern Quillby' differs from line 2; write"
                        + " the same in both rows",
                "rabbit_name=Pip; ear_number=QB2; years_in_club=4 | 'years_in_club' of 'Fern Quillby' differs from line 2; write the"
                        + " same in both rows",
                "member_name=Wren Tallow | the ear number 'QB1' stands in line 2 too; look into the ears: no two rabbits have the same"
            })
    void whatStandsTwiceIsToldInTheLaterRow(String change, String message) {
        Folder.Read read = read("study_level=junior; years_in_club=3", change);
        assertThat(read.bad()).containsExactly("club/members.csv:3: " + message);
    }

    @Test
    void aMemberWithABadRowIsLeftOutAsAWhole() {
        Folder.Read read =
                read("sex=cow", "rabbit_name=Pip; ear_number=QB2", "member_name=Wren Tallow; ear_number=QB3");
        assertThat(read.members().stream().map(Member::name)).containsExactly("Wren Tallow");
        assertThat(read.roster().orElseThrow().bad()).singleElement().satisfies(bad -> {
            assertThat(bad.name()).isEqualTo("Fern Quillby");
            assertThat(bad.at()).hasToString("club/members.csv:2");
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "birth_date=2016-04-25 | -",
                "rabbit_name==SUM(A1) | the cell '=SUM(A1)' looks like a formula; write the plain value; it is printed as it is",
                "rabbit_name=@bun | the cell '@bun' looks like a formula; write the plain value; it is printed as it is",
                "rabbit_name=-bun | the cell '-bun' looks like a formula; write the plain value; it is printed as it is",
                "ear_number=-12 | -",
                "breed=Havana; colour=chestnut agouti | the colour 'chestnut agouti' is not listed for the Havana (black, blue,"
                        + " broken, chocolate, lilac); look at the breed standard of your show; it is printed as you wrote it",
                "breed=Havana; colour=broken lilac | -",
                "breed=Tan; colour=black | -",
                "breed=Silver Fox; colour=silver | -",
                "breed=American; colour=broken blue | the colour 'broken blue' is not listed for the American (blue, white); look at"
                        + " the breed standard of your show; it is printed as you wrote it",
                "study_level=senior | 'study_level' is senior, above the division, which is junior; leave the cell empty, or name a"
                        + " lower level",
                "study_level=primary | -",
                "rabbit_birth_date=2026-06-13 | 'Biscuit' is 8 weeks old on the show day; -",
                "rabbit_birth_date=2026-06-14 | 'Biscuit' is 7 weeks old on the show day; a kit under 8 weeks stays at home with its"
                        + " mother: show another rabbit",
                "rabbit_birth_date=2013-08-08 | 'Biscuit' is 13 years old on the show day; look at the year of 'rabbit_birth_date'",
                "rabbit_birth_date=2013-08-09 | -",
                "weight_lb=5.5 | -",
                "weight_lb=5.6 | 'Biscuit' weighs 5.6 lb, outside the limits of a senior"
                        + " doe of the Dutch (3.5 to 5.5, in pounds); weigh it again and ask before you"
                        + " enter it in a breed class",
                "weight_lb=3.4 | 'Biscuit' weighs 3.4 lb, outside the limits of a senior"
                        + " doe of the Dutch (3.5 to 5.5, in pounds); weigh it again and ask before you"
                        + " enter it in a breed class",
                "weight_lb=2.3; breed=Netherland Dwarf | -",
                "weight_lb=2.6; breed=Netherland Dwarf | 'Biscuit' weighs 2.6 lb, outside the limits of a senior"
                        + " doe of the Netherland Dwarf (up to 2.5, in pounds); weigh it again and ask before you"
                        + " enter it in a breed class",
                "weight_lb=13; breed=Flemish Giant; sex=doe | 'Biscuit' weighs 13 lb, outside the limits of a senior"
                        + " doe of the Flemish Giant (14 and over, in pounds); weigh it again and ask before you"
                        + " enter it in a breed class",
                "weight_lb=13; breed=Flemish Giant; sex=buck | -",
                "weight_lb=3.4; rabbit_birth_date=2026-02-09 | -",
                "weight_lb=3.4; rabbit_birth_date=2026-02-08 | 'Biscuit' weighs 3.4 lb, outside the limits of a senior"
                        + " doe of the Dutch (3.5 to 5.5, in pounds); weigh it again and ask before you"
                        + " enter it in a breed class",
                "weight_lb=3; breed=Satin | -",
                "weight_lb=3; breed=mixed breed | -"
            })
    void whatIsHardToBelieveIsAWarningAndStopsNothing(String change, String message) {
        Folder.Read read = read(change);
        assertThat(read.bad()).isEmpty();
        assertThat(read.members()).hasSize(1);
        assertThat(read.problems())
                .isEqualTo(message.endsWith("-") ? List.of() : List.of("warning: club/members.csv:2: " + message));
    }

    @ParameterizedTest
    @CsvSource({"2022-08-09, 3", "2004-08-08, 22"})
    void anAgeThatIsHardToBelieveIsTold(LocalDate born, int years) {
        Folder.Read read = new Folder(temp)
                .club(Folder.CLUB.replace("age in September", "grade in January\ncut-off: 2026-01-01"))
                .members(Folder.rows("grade=4; birth_date=" + born));
        assertThat(read.problems())
                .containsExactly("warning: club/members.csv:2: the member is " + years
                        + " years old on the show day; look at the year of 'birth_date'");
    }

    @Test
    void earNumbersThatDifferOnlyInSmallAndLargeLettersAreTold() {
        Folder.Read read = read("", "member_name=Wren Tallow; rabbit_name=Button; ear_number=qb1");
        assertThat(read.members()).hasSize(2);
        assertThat(read.problems())
                .containsExactly(
                        "warning: club/members.csv:3: the ear number 'qb1' differs from 'QB1' in line 2 only in"
                                + " small and large letters; look into the ears again");
    }

    @Test
    void aMissingColumnStopsTheFile() {
        Folder.Read read = new Folder(temp).members("name,born,rabbit,bred,colour,sex,rabbit born,ear\n" + ROW);
        assertThat(read.roster()).isEmpty();
        assertThat(read.problems()).containsExactly("club/members.csv:1: no column 'breed'; rename the column 'bred'");
    }

    @ParameterizedTest
    @CsvSource({"age in September, birth_date", "grade in January, grade", "grade in August, grade"})
    void theRuleSetSaysWhichColumnIsNeeded(String ruleSet, String column) {
        Folder.Read read = new Folder(temp)
                .club(Folder.CLUB.replace("age in September", ruleSet + "\ncut-off: 2026-01-01"))
                .members("name,rabbit,breed,colour,sex,rabbit born,ear\nFern,Biscuit,Dutch,black,doe,2025-10-01,1");
        assertThat(read.problems())
                .containsExactly("club/members.csv:1: no column '" + column
                        + "'; add it to the first line; its separators may be commas, semicolons or tabs");
    }

    @Test
    void aColumnThatStandsTwiceStopsTheFileAndAnUnknownOneDoesNot() {
        String head = "name,born,rabbit,breed,colour,sex,rabbit born,ear";
        assertThat(new Folder(temp).members(head + ",Color\n" + ROW + ",blue").problems())
                .containsExactly(
                        "club/members.csv:1: two columns are read as 'colour'; take one out; 'Color' is the second");
        Folder.Read read = new Folder(temp).members(head + ",phone,wieght_lb\n" + ROW + ",1,4");
        assertThat(read.members()).hasSize(1);
        assertThat(read.problems())
                .containsExactly(
                        "warning: club/members.csv:1: the column 'phone' is not read; nothing needs it; take it out if you"
                                + " like",
                        "warning: club/members.csv:1: the column 'wieght_lb' is not read; did you mean 'weight_lb'?");
    }

    @Test
    void aFileWithoutRowsIsRefused() {
        assertThat(new Folder(temp).members("\n# nothing\n").problems())
                .containsExactly(
                        "club/members.csv: the file has no rows; write the names of the columns in the first line");
        assertThat(new Folder(temp).members(Folder.rows()).problems())
                .containsExactly(
                        "club/members.csv: no members stand in the file; write a row for each rabbit below the first line");
    }

    @Test
    void aRowInTheWrongFormIsBadAndTheOthersAreRead() {
        Folder.Read read = new Folder(temp)
                .members("name,born,rabbit,breed,colour,sex,rabbit born,ear\n"
                        + "\"Wren\" ,2016-04-25,Biscuit,Dutch,black,doe,2025-10-01,1\n"
                        + "Otis,2016-04-25,Domino,Lionhead,tortoise, black,doe,2025-10-01,2\n"
                        + ROW);
        assertThat(read.bad())
                .containsExactly(
                        "club/members.csv:2: something stands after the closing quote of a cell; put the whole cell inside"
                                + " the quotes; not even a space may follow them",
                        "club/members.csv:3: the row has 9 cells, the first line 8; put quotes round a cell that holds a"
                                + " separator");
        assertThat(read.only().name()).isEqualTo("Fern Quillby");
        assertThat(read.roster().orElseThrow().bad().get(1).name()).isEqualTo("Otis");
    }

    @Test
    void aWeightWithoutAUnitAnywhereIsRefused() {
        Folder.Read read = new Folder(temp).members(Folder.rows("weight_lb=4").replace("weight_lb", "weight"));
        assertThat(read.bad())
                .containsExactly(
                        "club/members.csv:2: 'weight' is '4'; name the unit, 4 lb or 4 kg, or the column weight_lb");
        String both = "name,born,rabbit,breed,colour,sex,rabbit born,ear,lb,kg\n" + ROW + ",4,2\n";
        assertThat(new Folder(temp).members(both).bad())
                .containsExactly("club/members.csv:2: two weights in this row; keep one of them");
    }

    @Test
    void aRosterNamesAllThatIsPrintedAsItStands() {
        Folder.Read read = new Folder(temp)
                .keys("grip: an open hand")
                .members(Folder.rows("member_name=Зоя; rabbit_name=Σοφία; breed=mixed; colour=grå"));
        Roster roster = read.roster().orElseThrow();
        Stream<Roster.Written> names =
                Stream.concat(roster.clubNames(), roster.members().stream().flatMap(Roster::names));
        assertThat(names.map(written -> written.at() + " " + written.text()))
                .containsExactly(
                        "club/club.md Quarry Bend Small Stock Club",
                        "club/club.md the show",
                        "club/club.md an open hand",
                        "club/club.md:7 Dear members.",
                        "club/members.csv:2 Зоя",
                        "club/members.csv:2 Σοφία",
                        "club/members.csv:2 QB1",
                        "club/members.csv:2 grå");
        assertThat(read.only().born()).isEqualTo(Optional.of(LocalDate.of(2016, 4, 25)));
    }
}
