package hutchleaf.cli;

import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads an option that takes one of a few words. */
final class OptionWord {
    private OptionWord() {}

    /**
     * What a word stands for.
     *
     * @param word as typed; null where the option was not given
     * @param allowed every word there is
     * @return empty where none was given, or with a problem
     */
    static <T> Optional<T> read(
            String option,
            @Nullable String word,
            List<String> allowed,
            Function<String, Optional<T>> meaning,
            Problems problems) {
        Optional<String> typed = Optional.ofNullable(word).map(each -> each.toLowerCase(Locale.ROOT));
        Optional<T> found = typed.flatMap(meaning);
        if (typed.isPresent() && found.isEmpty()) {
            problems.add(
                    Place.whole(option + " " + word), "there is no such choice", NearMiss.mend(typed.get(), allowed));
        }
        return found;
    }

    /** The constant of an enum that a word names, hyphens for its underscores. */
    static <E extends Enum<E>> Optional<E> constant(Class<E> type, String word) {
        return List.of(type.getEnumConstants()).stream()
                .filter(each -> word(each).equals(word))
                .findFirst();
    }

    /** As it is typed: {@code long-edge}. */
    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
