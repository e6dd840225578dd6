package hutchleaf.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Guesses which allowed word an author meant. */
public final class NearMiss {
    /** Any sign is close to any other: no guess is made for words shorter than this. */
    private static final int SHORTEST = 3;

    private NearMiss() {}

    /** The allowed word closest to the one found, when at most a third of its letters differ. */
    public static Optional<String> of(String found, Collection<String> allowed) {
        String word = found.toLowerCase(Locale.ROOT);
        if (word.length() < SHORTEST) {
            return Optional.empty();
        }
        int limit = Math.max(1, word.length() / 3);
        LevenshteinDistance distance = new LevenshteinDistance(limit);
        record Guess(String word, int distance) {}
        return allowed.stream()
                .map(candidate -> new Guess(candidate, distance.apply(word, candidate.toLowerCase(Locale.ROOT))))
                .filter(guess -> guess.distance() >= 0)
                .min(Comparator.comparingInt(Guess::distance).thenComparing(Guess::word))
                .map(Guess::word);
    }

    /** How to mend an unknown word: the near miss if there is one, else all that is allowed. */
    public static String mend(String found, Collection<String> allowed) {
        return of(found, allowed)
                .map(word -> "did you mean '" + word + "'?")
                .orElseGet(() -> "use one of: " + String.join(", ", allowed));
    }
}
