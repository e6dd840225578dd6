package hutchleaf.club;

import hutchleaf.model.Breed;
import hutchleaf.model.Rabbit.Coat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Breeds of which published handbooks and breed clubs name every colour (the sources are those of each breed's row in
 * {@code breeds/breeds.md}). Standards change, so another colour is worth a look, and no mistake.
 */
final class BreedColours {
    private static final String BROKEN = "broken";
    private static final Map<String, List<String>> NAMED = named();

    private BreedColours() {}

    private static Map<String, List<String>> named() {
        Map<String, List<String>> named = new LinkedHashMap<>();
        named.put("American", List.of("blue", "white"));
        named.put("American Chinchilla", List.of("chinchilla"));
        named.put("American Sable", List.of("sable"));
        named.put("Beveren", List.of("black", "blue", "blue-eyed white"));
        named.put("Checkered Giant", List.of("black", "blue"));
        named.put("Cinnamon", List.of("cinnamon"));
        named.put("Florida White", List.of("ruby-eyed white"));
        named.put("Giant Angora", List.of("ruby-eyed white"));
        named.put("Giant Chinchilla", List.of("chinchilla"));
        named.put("Havana", List.of("black", "blue", BROKEN, "chocolate", "lilac"));
        named.put("Lilac", List.of("lilac"));
        named.put("New Zealand", List.of("black", "blue", BROKEN, "red", "ruby-eyed white"));
        named.put("Silver", List.of("black", "brown", "fawn"));
        named.put("Silver Fox", List.of("black", "blue", "chocolate"));
        named.put("Silver Marten", List.of("black", "blue", "chocolate", "sable"));
        named.put("Standard Chinchilla", List.of("chinchilla"));
        named.put("Tan", List.of("black", "blue", "chocolate", "lilac"));
        return named;
    }

    /** Warns where a coat is of none of the colours of its breed. */
    static void check(Optional<Breed> breed, Coat coat, Cells cells) {
        breed.map(Breed::name)
                .filter(NAMED::containsKey)
                .filter(name -> !listed(NAMED.getOrDefault(name, List.of()), name, coat))
                .ifPresent(name -> cells.warn(
                        "the colour '" + coat.variety() + "' is not listed for the " + name + " ("
                                + String.join(", ", NAMED.getOrDefault(name, List.of())) + ")",
                        "look at the breed standard of your show; it is printed as you wrote it"));
    }

    private static boolean listed(List<String> colours, String breed, Coat coat) {
        List<String> words = words(coat.variety());
        // The breed's own name tells a pattern, and no colour: a Silver Fox that is called silver.
        boolean pattern = words(breed).containsAll(words);
        return pattern
                || ((!coat.broken() || colours.contains(BROKEN))
                        && colours.stream().anyMatch(colour -> words.containsAll(words(colour))));
    }

    private static List<String> words(String text) {
        return Stream.of(ColourName.words(text)).toList();
    }
}
