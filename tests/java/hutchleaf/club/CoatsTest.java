package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Rabbit.Coat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Breeds and coats as leaders write them, against the rows of the content's own tables. */
final class CoatsTest {
    private static final BreedNames BREEDS =
            new BreedNames(Folder.LIBRARY.tables().breeds());
    private static final ColourNames COLOURS = new ColourNames(Folder.LIBRARY.tables());

    private static ColourNames.Found find(String breed, String colour) {
        return COLOURS.find(
                BreedNames.mixed(breed)
                        ? Optional.empty()
                        : Optional.of(BREEDS.find(breed).orElseThrow()),
                colour);
    }

    private static Coat coat(String breed, String colour) {
        ColourNames.Found found = find(breed, colour);
        return found.coat().orElseThrow(() -> new AssertionError(found.what() + "; " + found.mend()));
    }

    static Stream<Breed> breeds() {
        return Folder.LIBRARY.tables().breeds().stream();
    }

    static Stream<Colour> coloursOfAnyBreed() {
        return Folder.LIBRARY.tables().colours().stream()
                .filter(colour -> !colour.name().equals("broken"))
                .filter(colour -> ColourName.of(colour, Folder.LIBRARY.tables().breeds())
                        .allMatch(name -> name.breeds().isEmpty()));
    }

    @ParameterizedTest
    @MethodSource("breeds")
    void everyBreedIsFoundHoweverItIsTyped(Breed breed) {
        for (String typed : List.of(
                breed.name(),
                breed.name().toUpperCase(Locale.ROOT),
                breed.name().replace(" ", "-"),
                breed.name().replace(" ", "").replace("'", "’"))) {
            assertThat(BREEDS.find(typed)).as(typed).contains(breed);
        }
    }

    @Test
    void accentsMakeNoOtherBreed() {
        assertThat(BREEDS.find("Crème d’Argent").map(Breed::name)).contains("Creme d’Argent");
    }

    @ParameterizedTest
    @CsvSource({
        "Duch, did you mean 'Dutch'?",
        "New Zealand White, did you mean 'New Zealand'?",
        "Netherland, did you mean 'Netherland Dwarf'?",
        "Hotot, did you mean 'Blanc de Hotot' or 'Dwarf Hotot'?",
        "Wombat, 'write a breed of breeds/breeds.md, for example Dutch, or mixed breed'"
    })
    void anUnknownBreedBringsAProposal(String typed, String mend) {
        assertThat(BREEDS.find(typed)).isEmpty();
        assertThat(BREEDS.mend(typed)).isEqualTo(mend);
    }

    @ParameterizedTest
    @MethodSource("coloursOfAnyBreed")
    void everyColourIsFoundByTheNameOfItsRow(Colour colour) {
        assertThat(coat("Mini Rex", colour.name()).colour()).as(colour.name()).contains(colour);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lionhead | tortoise, black | tortoise, black | black tortoise",
                "Lionhead | Black  Tortoise | tortoise, black | black tortoise",
                "Polish | Ruby Eyed White | ruby-eyed white | ruby-eyed white",
                "Polish | REW | ruby-eyed white | ruby-eyed white",
                "Polish | bew | blue-eyed white | blue-eyed white",
                "Rex | steel, gold-tipped | steel, gold-tipped | gold-tipped steel",
                "Rex | gold tipped steel | steel, gold-tipped | gold-tipped steel",
                "Holland Lop | frosty | frosted pearl (frosty) | frosty",
                "Holland Lop | frosted pearl | frosted pearl (frosty) | frosted pearl",
                "Rex | amber | chocolate agouti (cinnamon or amber) | amber",
                "Mini Lop | cinnamon | chocolate agouti (cinnamon or amber) | cinnamon",
                "Cinnamon | cinnamon | cinnamon (Cinnamon breed) | cinnamon",
                "Palomino | golden | golden (Palomino breed) | golden",
                "Palomino | lynx | lynx (Palomino breed) | lynx",
                "Rex | lynx | lynx | lynx",
                "Dutch | gray | grey (Dutch and English Spot) | grey",
                "English Spot | grey | grey (Dutch and English Spot) | grey",
                "French Angora | pearl | pearl (Angora) | pearl",
                "Satin | Siamese | Siamese (Satin) | Siamese",
                "Mini Rex | tricolor | tri-colour | tri-colour",
                "Silver Fox | silver / silver fox | silver / silver fox | silver",
                "Silver Fox | silver fox | silver / silver fox | silver",
                "Silver Fox | Black | silver / silver fox | black",
                "Silver | fawn | silver / silver fox | fawn",
                "Himalayan | pointed white, black | pointed white, black | pointed white with black points",
                "Himalayan | black | pointed white, black | pointed white with black points",
                "Californian | blue | pointed white, blue | pointed white with blue points",
                "Himalayan | black pointed white | pointed white, black | pointed white with black points",
                "Tan | black tan | black tan | black tan",
                "Tan | chocolate | chocolate tan | chocolate tan",
                "Silver Marten | sable | sable marten | sable marten",
                "Silver Marten | blue | blue silver marten | blue silver marten",
                "Harlequin | Magpie | harlequin, magpie | magpie harlequin",
                "American Sable | sable | Siamese sable | sable",
                "Dwarf Hotot | black | Hotot (white with eye bands) | black",
                "Dutch | black | black | black"
            })
    void aCoatIsFoundAndSaidAloud(String breed, String typed, String row, String said) {
        Coat coat = coat(breed, typed);
        assertThat(coat.colour().map(Colour::name)).contains(row);
        assertThat(coat.variety()).isEqualTo(said);
        assertThat(coat.broken()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mini Lop | broken chestnut agouti | chestnut agouti | broken chestnut agouti",
                "Mini Lop | Broken tortoise, black | tortoise, black | broken black tortoise",
                "Mini Lop | tortoise, black, broken | tortoise, black | broken black tortoise",
                "Mini Lop | black (broken) | black | broken black"
            })
    void aBrokenCoatHasTheRowOfItsPatches(String breed, String typed, String row, String said) {
        Coat coat = coat(breed, typed);
        assertThat(coat.colour().map(Colour::name)).contains(row);
        assertThat(coat.variety()).isEqualTo(said);
        assertThat(coat.broken()).isTrue();
    }

    @Test
    void aMixedBreedMayHaveAnyCoat() {
        assertThat(coat("mixed breed", "opal").colour().map(Colour::name)).contains("opal");
        assertThat(coat("crossbreed", "brown and cream"))
                .isEqualTo(new Coat("brown and cream", Optional.empty(), false));
        assertThat(coat("mixed", "broken")).isEqualTo(new Coat("broken", Optional.empty(), true));
        assertThat(coat("mixed", "white")).isEqualTo(new Coat("white", Optional.empty(), false));
    }

    /** The colour of these breeds has no row: the word is kept, and nothing is said of eye and nails. */
    @Test
    void aBreedWithAColourOfItsOwnKeepsItsWord() {
        assertThat(coat("Champagne d'Argent", "champagne")).isEqualTo(new Coat("champagne", Optional.empty(), false));
        assertThat(coat("Creme d'Argent", "creme").colour()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "New Zealand | white | unknown colour 'white' for a New Zealand; did you mean 'ruby-eyed white' or 'blue-eyed white'?",
                "Polish | White | unknown colour 'White' for a Polish; did you mean 'ruby-eyed white' or 'blue-eyed white'?",
                "Californian | white | unknown colour 'white' for a Californian; did you mean 'pointed white, black'?",
                "Dwarf Hotot | white | unknown colour 'white' for a Dwarf Hotot; did you mean 'Hotot'?",
                "Rex | blak | unknown colour 'blak' for a Rex; did you mean 'black'?",
                "Rex | black tort | unknown colour 'black tort' for a Rex; did you mean 'tortoise, black'?",
                "Rex | chestnut | unknown colour 'chestnut' for a Rex; did you mean 'chestnut agouti'?",
                "Rex | golden | unknown colour 'golden' for a Rex; write a colour of colours/colours.md, for example black, opal or"
                        + " chestnut agouti",
                "Rex | himalayan | unknown colour 'himalayan' for a Rex; write a colour of colours/colours.md, for example black,"
                        + " opal or chestnut agouti",
                "Rex | broken | the colour 'broken' does not say of which colour the patches are; write it too, for example broken"
                        + " black",
                "Rex | broken ruby-eyed white | unknown colour 'broken ruby-eyed white' for a Rex; a broken coat is white with"
                        + " another colour: write that one"
            })
    void aCoatThatIsNotSureIsRefused(String breed, String typed, String message) {
        ColourNames.Found found = find(breed, typed);
        assertThat(found.coat()).isEmpty();
        assertThat(found.what() + "; " + found.mend()).isEqualTo(message);
    }
}
