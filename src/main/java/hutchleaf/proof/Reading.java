package hutchleaf.proof;

import hutchleaf.model.Level;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How hard a text is to read.
 *
 * @param topic path of the topic; empty for a whole edition
 * @param words words of running text
 * @param grade Flesch-Kincaid grade; the syllables of trade words are left out; empty under 100 words
 * @param wordsASentence empty where there is no sentence
 */
public record Reading(
        Level level,
        Part part,
        Optional<String> topic,
        int words,
        OptionalDouble grade,
        OptionalDouble wordsASentence,
        Extra extra) {
    /** What was read. */
    public enum Part {
        GUIDE,
        DECK;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Flesch reading ease, the share of trade words, 0 to 1, and the scores that need a word list; empty where none was named. */
    public record Extra(OptionalDouble ease, double tradeShare, OptionalDouble spache, OptionalDouble daleChall) {}

    /** Flesch reading ease, trade words left out of the syllables; empty under 100 words. */
    public OptionalDouble ease() {
        return extra.ease();
    }

    public double tradeShare() {
        return extra.tradeShare();
    }

    /** Of the primary edition. */
    public OptionalDouble spache() {
        return extra.spache();
    }

    /** Of the editions above primary. */
    public OptionalDouble daleChall() {
        return extra.daleChall();
    }
}
