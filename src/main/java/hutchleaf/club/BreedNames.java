package hutchleaf.club;

import hutchleaf.model.Breed;
import hutchleaf.problem.NearMiss;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds a breed by the name that a leader writes: case, spaces, accents and other signs make no difference. */
record BreedNames(List<Breed> breeds) {
    private static final Set<String> MIXED = Set.of("mixed", "mixedbreed", "crossbreed", "cross", "crossbred", "mix");
    private static final int SHORTEST_WORD = 4;

    BreedNames {
        breeds = List.copyOf(breeds);
    }

    static boolean mixed(String written) {
        return MIXED.contains(letters(written));
    }

    Optional<Breed> find(String written) {
        return breeds.stream()
                .filter(breed -> letters(breed.name()).equals(letters(written)))
                .findFirst();
    }

    /** What to write in place of a name that is not in the table. */
    String mend(String written) {
        List<String> names = breeds.stream().map(Breed::name).toList();
        return NearMiss.of(written, names)
                .map(near -> "did you mean '" + near + "'?")
                .or(() -> oneOf(
                        names.stream().filter(name -> shareWords(name, written)).toList()))
                .orElse("write a breed of breeds/breeds.md, for example Dutch, or mixed breed");
    }

    /** {@code did you mean 'a' or 'b'?}, when there are one to four of them. */
    static Optional<String> oneOf(List<String> names) {
        return names.isEmpty() || names.size() > 4
                ? Optional.empty()
                : Optional.of("did you mean '" + String.join("' or '", names) + "'?");
    }

    /** Whether one of the two is a part of the other, in whole words. */
    private static boolean shareWords(String name, String written) {
        String one = plain(name);
        String other = plain(written);
        List<String> words = Arrays.asList(other.split(" "));
        return other.length() >= SHORTEST_WORD
                && (words.containsAll(Arrays.asList(one.split(" ")))
                        || Arrays.asList(one.split(" ")).containsAll(words));
    }

    private static String letters(String text) {
        return plain(text).replace(" ", "");
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
