package hutchleaf.proof;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A spelling that makes a word longer or shorter by a syllable than its groups of vowels are many.
 *
 * @param change what each place where the spelling stands adds: 1 or -1
 * @param examples words that have the spelling, each with its syllables: {@code cake 1, mane 1}
 */
record SyllableRule(Pattern spelling, int change, String examples) {
    static SyllableRule adds(String spelling, String examples) {
        return new SyllableRule(Pattern.compile(spelling), 1, examples);
    }

    static SyllableRule drops(String spelling, String examples) {
        return new SyllableRule(Pattern.compile(spelling), -1, examples);
    }

    /** What this rule adds to a word in small letters. */
    int in(String word) {
        int sum = 0;
        Matcher matcher = spelling.matcher(word);
        while (matcher.find()) {
            sum += change;
        }
        return sum;
    }
}
