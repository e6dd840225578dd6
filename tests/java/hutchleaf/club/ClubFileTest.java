package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Block;
import hutchleaf.model.Club;
import hutchleaf.model.WeightUnit;
import hutchleaf.sheet.Correction;
import hutchleaf.sheet.Length;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code club.md}: every key, every default, every mistake with its line. */
final class ClubFileTest {
    private static final String MEMBERS = Folder.rows("");

    @TempDir
    private Path temp = Path.of("");

    private Club club(String keys) {
        Folder.Read read = new Folder(temp).keys(keys).members(MEMBERS);
        return read.roster()
                .orElseThrow(() -> new AssertionError(read.problems()))
                .club();
    }

    private List<String> problems(String club) {
        Folder.Read read = new Folder(temp).club(club).members(MEMBERS);
        assertThat(read.roster()).as("a roster in spite of errors").isEmpty();
        return read.problems();
    }

    @Test
    void whatAClubDoesNotSayHasADefault() {
        Club club = club("");
        assertThat(club.name()).isEqualTo("Quarry Bend Small Stock Club");
        assertThat(club.show())
                .isEqualTo(new Club.Show(
                        "the show", LocalDate.of(2026, 8, 8), "age in September", LocalDate.of(2025, 9, 1), Set.of()));
        assertThat(club.practice()).isEqualTo(new Club.Practice(Optional.empty(), Set.of(), 15, ""));
        assertThat(club.print())
                .isEqualTo(new Club.Print(
                        Paper.LETTER,
                        new Club.Price("", BigDecimal.ZERO),
                        new Club.Price("", BigDecimal.ZERO),
                        Club.Spelling.UK,
                        WeightUnit.LB,
                        new Club.Printer(Correction.NONE, club.at()),
                        Club.Saver.NO));
    }

    @Test
    void everyKeyIsRead() {
        Club club = club("""
                # a note
                show-name: Summer Show
                cut-off: 10/1/2025
                paper: A4
                date-form: month/day/year
                start-date: 6/27/2026
                rest-days: Sunday, wed
                minutes-a-day: 20
                price-plain: $0.03
                price-card: 0,12 €
                spelling: US
                weights: kg
                saver: yes
                leave-out: figures/sex-guide.svg, figures/carry.svg
                grip: one open hand over the shoulders, behind the ears
                printer: 100.2, 99.8, -0.5, 0""");
        assertThat(club.show())
                .isEqualTo(new Club.Show(
                        "Summer Show",
                        LocalDate.of(2026, 8, 8),
                        "age in September",
                        LocalDate.of(2025, 10, 1),
                        Set.of("figures/sex-guide.svg", "figures/carry.svg")));
        assertThat(club.practice())
                .isEqualTo(new Club.Practice(
                        Optional.of(LocalDate.of(2026, 6, 27)),
                        Set.of(DayOfWeek.SUNDAY, DayOfWeek.WEDNESDAY),
                        20,
                        "one open hand over the shoulders, behind the ears"));
        assertThat(club.print())
                .isEqualTo(new Club.Print(
                        Paper.A4,
                        new Club.Price("$", new BigDecimal("0.03")),
                        new Club.Price("€", new BigDecimal("0.12")),
                        Club.Spelling.US,
                        WeightUnit.KG,
                        new Club.Printer(
                                new Correction(100.2, 99.8, Length.mm(-0.5), Length.ZERO),
                                club.at().atLine(20)),
                        Club.Saver.YES));
    }

    @Test
    void theBodyIsTheLetter() {
        Folder.Read read = new Folder(temp)
                .club(Folder.CLUB + "\n- **{member.first name}**, bring {rabbit.name}.\n")
                .members(MEMBERS);
        assertThat(read.problems()).isEmpty();
        List<Block> letter = read.roster().orElseThrow().club().letter();
        assertThat(letter).hasSize(2);
        assertThat(letter.get(1).words().map(words -> words.plain()))
                .containsExactly("{member.first name}, bring {rabbit.name}.");
        assertThat(letter.get(1).at().line()).isEqualTo(8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "$0.03 | $ | 0.03",
                "0.03 | '' | 0.03",
                "EUR 0.03 | EUR | 0.03",
                "0,03 € | € | 0.03",
                "£1 | £ | 1",
                "CA$0.05 | CA$ | 0.05",
                "0.03 GBP | GBP | 0.03"
            })
    void aPriceIsReadWithItsCurrencyOnEitherSide(String written, String currency, BigDecimal amount) {
        assertThat(club("price-plain: " + written).print().plain()).isEqualTo(new Club.Price(currency, amount));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shwo-name: x | unknown key 'shwo-name'; did you mean 'show-name'?",
                "paper: a5 | 'paper' is 'a5'; use one of: letter, a4",
                "date-form: m/d/y | 'date-form' is 'm/d/y'; use one of: iso, month/day/year, day/month/year, day.month.year",
                "start-date: 2026-08-08 | 'start-date' is 8 August 2026, not before the show; study starts before 8 August 2026",
                "start-date: 06/07/2026 | cannot read the date '06/07/2026' in 'start-date': it may mean 2026-06-07 or 2026-07-06;"
                        + " write it in one of these ways, or set date-form in club.md to month/day/year or day/month/year",
                "cut-off: 2015-09-01 | 'cut-off' is 1 September 2015, two years or more from the show; look at the year",
                "rest-days: sundy | unknown day 'sundy'; did you mean 'sunday'?",
                "rest-days: mon, tue, wed, thu, fri, sat, sun | every day is a rest day; leave at least one day for the cards",
                "minutes-a-day: 4 | 'minutes-a-day' is '4'; write a whole number from 5 to 60",
                "minutes-a-day: 61 | 'minutes-a-day' is '61'; write a whole number from 5 to 60",
                "minutes-a-day: ten | 'minutes-a-day' is 'ten'; write a whole number from 5 to 60",
                "price-plain: cheap | cannot read the price 'cheap' in 'price-plain'; write it as $0.03, EUR 0.03 or 0.03",
                "price-card: $1 € | cannot read the price '$1 €' in 'price-card'; write it as $0.03, EUR 0.03 or 0.03",
                "price-card: -1 | cannot read the price '-1' in 'price-card'; write it as $0.03, EUR 0.03 or 0.03",
                "weights: stone | 'weights' is 'stone'; use one of: lb, kg",
                "saver: yess | 'saver' is 'yess'; did you mean 'yes'?",
                "spelling: american | 'spelling' is 'american'; use one of: uk, us",
                "leave-out: figures/sex-giude.svg | no figure 'figures/sex-giude.svg'; did you mean 'figures/sex-guide.svg'?",
                "printer: 100, 100, 0 | cannot read 'printer: 100, 100, 0'; write four numbers: scale-x, scale-y in per cent,"
                        + " offset-x, offset-y in mm, as in 99.2, 99.5, 0.5, -1",
                "printer: 99,2, 99,5, 0, 0 | cannot read 'printer: 99,2, 99,5, 0, 0'; write four numbers: scale-x, scale-y in"
                        + " per cent, offset-x, offset-y in mm, as in 99.2, 99.5, 0.5, -1",
                "printer: 100, 100, , 0 | cannot read 'printer: 100, 100, , 0'; write four numbers: scale-x, scale-y in per cent,"
                        + " offset-x, offset-y in mm, as in 99.2, 99.5, 0.5, -1",
                "printer: 0, 100, 0, 0 | 'printer: 0, 100, 0, 0' has scale-x 0, not 95 to 105; print the sheet of 'hutchleaf"
                        + " ruler' at 100 % and measure again",
                "printer: 100, 105.1, 0, 0 | 'printer: 100, 105.1, 0, 0' has scale-y 105.1, not 95 to 105; print the sheet of"
                        + " 'hutchleaf ruler' at 100 % and measure again",
                "printer: 100, 100, 0, -10.5 | 'printer: 100, 100, 0, -10.5' has offset-y -10.5, not -10 to 10; print the sheet of"
                        + " 'hutchleaf ruler' at 100 % and measure again",
                "grip: hold the ears | 'grip' names 'ears' as what is held; that hurts: say where an open hand lies, for example over"
                        + " the shoulders, behind the ears"
            })
    void aMistakeInAKeyIsToldWithItsLine(String line, String message) {
        assertThat(problems(Folder.CLUB.replace("September\n", "September\n" + line + "\n")))
                .containsExactly("club/club.md:5: " + message);
    }

    @Test
    void theNeededKeysAreAskedFor() {
        assertThat(problems("---\nshow-name: x\n---\n"))
                .containsExactly(
                        "club/club.md:1: no 'name:' in the front matter; add a line name: ...",
                        "club/club.md:1: no 'rule-set:' in the front matter; add a line rule-set: ...",
                        "club/club.md:1: no 'show-date:' in the front matter; add a line show-date: ...");
    }

    @Test
    void anUnknownRuleSetIsToldWithThoseThereAre() {
        assertThat(problems(Folder.CLUB.replace("age in September", "age in May")))
                .containsExactly("club/club.md:4: unknown rule set 'age in May'; use one of: age in September, age in"
                        + " December, age in January, grade in January, grade in August");
    }

    @Test
    void aGuessedCutOffIsAWarningAndAWrittenOneIsNot() {
        String december = Folder.CLUB.replace("age in September", "age in December");
        Folder.Read guessed = new Folder(temp).club(december).members(MEMBERS);
        assertThat(guessed.problems())
                .containsExactly("warning: club/club.md:4: ages are counted on 31 December 2026, as we guess from '31"
                        + " December of the programme year'; add a line cut-off: with the date in your rule book");
        Folder.Read written = new Folder(temp)
                .club(december.replace("December\n", "December\ncut-off: 2025-12-31\n"))
                .members(MEMBERS);
        assertThat(written.problems()).isEmpty();
        assertThat(written.roster().orElseThrow().club().show().countedOn()).isEqualTo(LocalDate.of(2025, 12, 31));
    }

    @Test
    void theLetterHasNoHeadingsAndPointsToNothingThatIsNotThere() {
        assertThat(problems(Folder.CLUB + """

                # Hello

                A line
                ------

                See {rabbit.nmae} and {fact.gestatoin}.

                ![a](figures/carrry.svg "b")

                [ears](ears.md)
                """))
                .containsExactly(
                        "club/club.md:8: the letter has a heading, '# Hello'; write it as a line of its own in **bold**",
                        "club/club.md:11: the letter has a heading, 'A line'; write it as a line of its own in **bold**",
                        "club/club.md:13: no fact 'gestatoin'; did you mean 'gestation'?",
                        "club/club.md:13: unknown blank '{rabbit.nmae}'; did you mean 'rabbit.name'?",
                        "club/club.md:15: no figure 'figures/carrry.svg'; did you mean 'figures/carry.svg'?",
                        "club/club.md:17: no topic 'ears.md'; name one of the content, or write it in words");
    }

    @Test
    void missingFilesAreNamed() throws IOException {
        assertThat(Folder.read(temp.resolve("none"), "none", Folder.TODAY).problems())
                .containsExactly("none: there is no such folder; name a club's folder that is there");
        Path empty = Files.createDirectory(temp.resolve("empty"));
        assertThat(Folder.read(empty, "empty", Folder.TODAY).problems())
                .containsExactly(
                        "empty/club.md: there is no such file; a club's folder holds club.md and members.csv",
                        "empty/members.csv: there is no such file; a club's folder holds club.md and members.csv");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "one open hand over the shoulders, behind the ears",
                "the hand lies behind the rabbit's ears and only steadies; never the ears, scruff or neck skin",
                "One hand steadies the head and holds neither skin nor ears. The other hand carries all the weight.",
                "palm between the ears and shoulders",
                "thumb and finger round the shoulders, not the neck"
            })
    void aKindGripIsTaken(String grip) {
        assertThat(club("grip: " + grip).practice().grip()).isEqualTo(grip);
    }

    /** A rabbit is never held by ears, scruff or the skin of its neck: the handling topics of the content, and their sources. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hold the ears flat with one hand | ears",
                "a firm hold at the base of the ears | ears",
                "hand over both ears | ears",
                "scruff it gently | scruff",
                "take the loose skin over the shoulders | loose skin",
                "gather the skin of the neck | skin of the neck",
                "grip the neck skin | neck skin",
                "by the nape | nape",
                "a hand round the neck | neck",
                "never the ears, hold the scruff | scruff",
                "not the ears but the skin behind them | skin",
                "do not let go of the ears | ears",
                "behind the ears and then by the scruff | scruff"
            })
    void aGripThatHurtsIsRefused(String grip, String held) {
        assertThat(problems(Folder.CLUB.replace("September\n", "September\ngrip: " + grip + "\n")))
                .containsExactly("club/club.md:5: 'grip' names '" + held
                        + "' as what is held; that hurts: say where an open hand lies, for example over the shoulders,"
                        + " behind the ears");
    }

    @Test
    void aGripIsALine() {
        assertThat(problems(Folder.CLUB.replace("September\n", "September\ngrip: " + "hand ".repeat(40) + "\n")))
                .containsExactly("club/club.md:5: 'grip' has 199 letters; keep it to one line of 160");
    }
}
