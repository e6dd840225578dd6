package hutchleaf.club;

import hutchleaf.model.Breed;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Breeds whose members name the colour and leave out the pattern that every rabbit of the breed has: a black Himalayan is
 * pointed white, not black all over. What each breed looks like is in its row of {@code breeds/breeds.md}; that owners
 * leave the pattern out is common practice, no source.
 */
final class ColourHabit {
    /** The row that is meant, with {@code *} for the colour written. */
    private static final Map<String, List<String>> ROWS = Map.of(
            "Himalayan", List.of("pointed white, *"),
            "Californian", List.of("pointed white, *"),
            "Tan", List.of("* tan"),
            "Silver Marten", List.of("* silver marten", "* marten"),
            "Harlequin", List.of("harlequin, *"));

    /** The row of a breed's coat, and the words that its owners say in its place. */
    private record OwnCoat(String row, Set<String> said) {}

    private static final OwnCoat SILVER =
            new OwnCoat("silver", Set.of("black", "blue", "brown", "chocolate", "fawn", "lilac"));
    private static final OwnCoat HOTOT = new OwnCoat("Hotot", Set.of("black", "chocolate", "blue", "lilac"));

    /** Breeds with one row for the coat, whatever colour lies under it; the colour is what is said. */
    private static final Map<String, OwnCoat> COATS = Map.of(
            "Silver",
            SILVER,
            "Silver Fox",
            SILVER,
            "Blanc de Hotot",
            HOTOT,
            "Dwarf Hotot",
            HOTOT,
            "American Sable",
            new OwnCoat("Siamese sable", Set.of("sable")));

    /** Breeds of one colour, called like the breed, that has no row in the colour table. */
    private static final Set<String> OWN_COLOUR = Set.of("Champagne d’Argent", "Argente Brun", "Creme d’Argent");

    private ColourHabit() {}

    /** Names of rows to look for, best first. */
    static Stream<String> rows(Optional<Breed> breed, String typed) {
        return breed.stream()
                .flatMap(named -> ROWS.getOrDefault(named.name(), List.of()).stream())
                .map(row -> row.replace("*", typed));
    }

    /** The row of the breed's coat, when only the colour under it is written. */
    static Optional<String> coat(Optional<Breed> breed, String typed) {
        return breed.flatMap(named -> Optional.ofNullable(COATS.get(named.name())))
                .filter(coat -> coat.said().contains(ColourName.key(typed)))
                .map(OwnCoat::row);
    }

    /** Whether the words are those of the breed's own name, and the breed has its colour to itself. */
    static boolean breedsOwn(Optional<Breed> breed, String typed) {
        return breed.filter(named -> OWN_COLOUR.contains(named.name()))
                .filter(named ->
                        List.of(ColourName.words(named.name())).containsAll(Arrays.asList(ColourName.words(typed))))
                .isPresent();
    }

    /** What "white" alone may mean. */
    static List<String> whites(Optional<Breed> breed) {
        String name = breed.map(Breed::name).orElse("");
        if (name.endsWith("Hotot")) {
            return List.of("Hotot");
        }
        return ROWS.getOrDefault(name, List.of()).contains("pointed white, *")
                ? List.of("pointed white, black")
                : List.of("ruby-eyed white", "blue-eyed white");
    }
}
