package hutchleaf.contest;

import java.util.List;
import java.util.Optional;

/** Small numbers as a sentence says them. */
public final class CountingWord {
    private static final List<String> WORDS =
            List.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

    private CountingWord() {}

    /** {@code three} for 3; figures above ten. */
    public static String of(int number) {
        return number >= 0 && number < WORDS.size() ? WORDS.get(number) : String.valueOf(number);
    }

    /** The number that a word or its figures say, from 1 up. */
    static Optional<Integer> parse(String word) {
        if (word.matches("[1-9]\\d?")) {
            return Optional.of(Integer.valueOf(word));
        }
        return Optional.of(WORDS.indexOf(word)).filter(number -> number > 0);
    }
}
