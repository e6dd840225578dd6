package hutchleaf.proof;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/**
 * The words, sentences and syllables of running text. No headings, captions, table cells or lists of names should be in
 * it (Flesch, A New Readability Yardstick, Journal of Applied Psychology 32, 1948).
 *
 * <p>Words are counted as {@link Token} has it, syllables as {@link Syllables} has it. A sentence ends at a full stop, a
 * question mark or an exclamation mark, but not inside a number such as 3.5, nor after an abbreviation such as lb. or
 * e.g.; where the text stops, its last sentence ends. A colon, a semicolon and a dash end none: Flesch lets them close a
 * unit that could stand alone, which is a reader's judgement and not a count.
 *
 * @param syllables those of the words that are not trade words
 * @param tradeWords how many of the words are trade words: they make a sentence longer, and no word harder
 */
record TextCount(int words, int sentences, int syllables, int tradeWords) {
    static final TextCount NONE = new TextCount(0, 0, 0);

    TextCount {
        if (words < 0 || sentences < 0 || syllables < 0 || tradeWords < 0 || tradeWords > words) {
            throw new IllegalArgumentException("no such text: " + words + " words, " + sentences + " sentences, "
                    + syllables + " syllables, " + tradeWords + " trade words");
        }
    }

    TextCount(int words, int sentences, int syllables) {
        this(words, sentences, syllables, 0);
    }

    static TextCount of(String runningText) {
        return of(runningText, word -> false);
    }

    /**
     * A count that leaves trade words out of the syllables.
     *
     * @param tradeWord asked for each word as it is written, without the marks around it
     */
    static TextCount of(String runningText, Predicate<String> tradeWord) {
        return of(Token.of(runningText), tradeWord, Syllables::in);
    }

    /** The same of words that were cut apart before, with syllables that may have been counted before. */
    static TextCount of(List<Token> tokens, Predicate<String> tradeWord, ToIntFunction<String> syllables) {
        if (tokens.isEmpty()) {
            return NONE;
        }
        List<String> plain =
                tokens.stream().map(Token::word).filter(tradeWord.negate()).toList();
        int ended = (int) tokens.stream().filter(Token::endsSentence).count();
        return new TextCount(
                tokens.size(),
                tokens.get(tokens.size() - 1).endsSentence() ? ended : ended + 1,
                plain.stream().mapToInt(syllables).sum(),
                tokens.size() - plain.size());
    }

    /** Both texts as one: the cards of a deck, the paragraphs of a guide. */
    TextCount plus(TextCount other) {
        return new TextCount(
                words + other.words,
                sentences + other.sentences,
                syllables + other.syllables,
                tradeWords + other.tradeWords);
    }

    /** How long a sentence is on average, trade words counted; empty for an empty text. */
    OptionalDouble wordsPerSentence() {
        return words == 0 || sentences == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) words / sentences);
    }

    /** How long a word is on average, trade words left out; empty where no other word is. */
    OptionalDouble syllablesPerWord() {
        int others = words - tradeWords;
        return others == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) syllables / others);
    }
}
