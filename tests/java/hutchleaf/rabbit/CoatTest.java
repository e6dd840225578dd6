package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.model.Sex;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Eyes, nails, groups and names of coats. Sources are ids of {@code sources.md}. */
final class CoatTest {
    private static Findings findings(String breed, String coat, Level level) {
        return RabbitEngine.of(Samples.rabbit(breed, coat, Sex.DOE, Samples.SHOW.minusMonths(10)), Samples.SHOW, level);
    }

    /** Eye colours that a source states outright; the file names it by row. What depends on a base is looked up. */
    @ParameterizedTest
    @CsvFileSource(files = "tests/resources/handbook/eye-colours.csv", delimiter = '|', numLinesToSkip = 1)
    void anEyeIsTheOneOfItsSourceWhereItGivesOne(String colour, String eye, String source) {
        assertThat(findings("Mini Rex", colour, Level.PRIMARY).words(Point.EYE))
                .as(colour + ", " + source)
                .isEqualTo(stated(eye.replace("gray", "grey")));
    }

    private static Optional<String> stated(String eye) {
        return switch (eye) {
            case "brown (ruby cast allowed)", "brown (ruby glow)", "brown preferred; blue-grey or marbled accepted" ->
                Optional.of("brown");
            case "blue-grey (ruby cast allowed)" -> Optional.of("blue-grey");
            case "pink (iris pink, pupil ruby red)" -> Optional.of("pink");
            case "brown", "blue-grey", "blue", "dark brown", "brown or hazel" -> Optional.of(eye);
            default -> Optional.empty();
        };
    }

    /** Three white breeds: wiki-nz for the New Zealand, bew-info for blue eyes, hotot-c for the Blanc de Hotot. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "New Zealand | ruby-eyed white | PRIMARY | pink",
                "New Zealand | ruby-eyed white | SENIOR | pink, with a ruby red pupil",
                "Beveren | blue-eyed white | SENIOR | blue",
                "Blanc de Hotot | Hotot (white with eye bands) | SENIOR | dark brown",
                "Dutch | black | SENIOR | brown",
                "Mini Lop | broken blue | SENIOR | blue-grey"
            })
    void whiteCoatsTellThemselvesApartByTheEye(String breed, String coat, Level level, String eye) {
        assertThat(findings(breed, coat, level).words(Point.EYE)).contains(eye);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Flemish Giant | fawn | our colour table is not sure",
                "Netherland Dwarf | steel, gold-tipped | it depends on a colour that the list does not name",
                "English Spot | black | a marked breed has a rule of its own",
                "Mini Rex | broken | it depends on a colour that the list does not name",
                "Harlequin | harlequin, Japanese | our colour table is not sure"
            })
    void anEyeThatTheTablesDoNotTellIsLookedUp(String breed, String coat, String basis) {
        assertThat(findings(breed, coat, Level.SENIOR).answer(Point.EYE))
                .isEqualTo(new Answer.Check("eye colour", basis));
    }

    /** tnt-black and tnt-choc: dark or coloured, matching, never white. A Dutch has white feet (adrc): look it up. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mini Rex | black | dark",
                "Havana | chocolate | coloured",
                "Himalayan | pointed white, black | coloured",
                "Mini Rex | broken black | ?",
                "Dutch | black | ?",
                "Polish | ruby-eyed white | ?",
                "Satin | Siamese (Satin) | ?",
                "Mini Rex | Vienna marked | ?",
                "Tan | black tan | ?"
            })
    void nailsAreNamedOnlyWhereTheRuleIsSure(String breed, String coat, String nails) {
        assertThat(findings(breed, coat, Level.SENIOR).words(Point.NAILS).orElse("?"))
                .isEqualTo(nails);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mini Rex | black | self",
                "Mini Rex | broken black | broken",
                "Palomino | golden (Palomino breed) | ?",
                "Satin | copper | ?",
                "Dutch | black | ?",
                "Tan | black tan | tan pattern"
            })
    void aGroupIsNamedOnlyWhereTheTableIsSure(String breed, String coat, String group) {
        assertThat(findings(breed, coat, Level.SENIOR).words(Point.COLOUR_GROUP).orElse("?"))
                .isEqualTo(group);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tortoise, black | black tortoise",
                "broken tortoise, black | broken black tortoise",
                "pointed white, lilac | pointed white with lilac points",
                "steel, gold-tipped | gold-tipped steel",
                "harlequin, Japanese | Japanese harlequin",
                "lynx (Palomino breed) | lynx",
                "chocolate agouti (cinnamon or amber) | chocolate agouti",
                "silver / silver fox | silver",
                "broken chestnut agouti | broken chestnut agouti",
                "black | black"
            })
    void aVarietyIsNamedAsItIsSaid(String written, String said) {
        assertThat(Spoken.variety(written)).isEqualTo(said);
    }

    /** fur-types/six-fur-types.md: two coats on one rabbit are both named. lionhead-ref, afl-guide, angora-four. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lionhead | rollback, with a mane of wool",
                "American Fuzzy Lop | wool, with normal fur on head, ears and feet",
                "French Angora | wool, with normal fur on face, ears and front feet",
                "Satin Angora | wool, with a shine like glass",
                "English Angora | wool",
                "Mini Lop | ?",
                "Dwarf Papillon | ?",
                "Giant Chinchilla | flyback"
            })
    void furIsNamedWithBothItsCoats(String breed, String fur) {
        assertThat(findings(breed, "black", Level.SENIOR).words(Point.FUR).orElse("?"))
                .isEqualTo(fur);
    }

    /** fur-page: wool does not lie flat. Common practice, no source: nobody blows into a coat. */
    @ParameterizedTest
    @CsvSource({"English Angora", "Jersey Wooly"})
    void woolIsLongAndDoesNotLieFlat(String breed) {
        for (Level level : Level.values()) {
            assertThat(findings(breed, "black", level).words(Point.FUR_TEST).orElseThrow())
                    .doesNotContain("blow")
                    .contains(level == Level.PRIMARY ? "long and soft" : "does not lie flat");
        }
    }
}
