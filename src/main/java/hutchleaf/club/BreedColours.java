package hutchleaf.club;

import hutchleaf.model.Breed;
import hutchleaf.model.Rabbit.Coat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Holds a coat against the colours that the breed's row names. Standards change, so another one is no mistake. */
final class BreedColours {
    private static final String BROKEN = "broken";

    private BreedColours() {}

    /** Warns where a coat is of none of the colours of its breed; where the row names none, nothing is said. */
    static void check(Optional<Breed> breed, Coat coat, Cells cells) {
        breed.filter(known -> !known.colours().isEmpty() && !listed(known, coat))
                .ifPresent(known -> cells.warn(
                        "the colour '" + coat.variety() + "' is not listed for the " + known.name() + " ("
                                + String.join(", ", known.colours()) + ")",
                        "look at the breed standard of your show; it is printed as you wrote it"));
    }

    private static boolean listed(Breed breed, Coat coat) {
        List<String> words = words(coat.variety());
        // The breed's own name tells a pattern, and no colour: a Silver Fox that is called silver.
        boolean pattern = words(breed.name()).containsAll(words);
        return pattern
                || ((!coat.broken() || breed.colours().contains(BROKEN))
                        && breed.colours().stream().anyMatch(colour -> words.containsAll(words(colour))));
    }

    private static List<String> words(String text) {
        return Stream.of(ColourName.words(text)).toList();
    }
}
