package hutchleaf.proof;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/**
 * How hard a text is to read, by four published formulas. Each is empty for a text without words or sentences. None is
 * reliable under about 100 words: add up the cards of a deck first.
 */
final class Readability {
    /** Dale and Chall add the jump above this share of unfamiliar words, not at it. */
    private static final double JUMP_ABOVE_PERCENT = 5;

    private Readability() {}

    /**
     * Flesch Reading Ease, 0 hard to 100 easy: 206.835 − 1.015 words a sentence − 84.6 syllables a word. Flesch, A New
     * Readability Yardstick, Journal of Applied Psychology 32 (1948).
     */
    static OptionalDouble fleschReadingEase(TextCount count) {
        return ofBoth(count, Readability::fleschReadingEase);
    }

    static double fleschReadingEase(double wordsPerSentence, double syllablesPerWord) {
        return 206.835 - 1.015 * wordsPerSentence - 84.6 * syllablesPerWord;
    }

    /**
     * Flesch-Kincaid, a school grade: 0.39 words a sentence + 11.8 syllables a word − 15.59. Kincaid, Fishburne, Rogers and
     * Chissom, Navy Research Branch Report 8-75 (1975), not their simplified form. It was fitted on adults and is weak
     * below grade 4.
     */
    static OptionalDouble fleschKincaid(TextCount count) {
        return ofBoth(count, Readability::fleschKincaid);
    }

    static double fleschKincaid(double wordsPerSentence, double syllablesPerWord) {
        return 0.39 * wordsPerSentence + 11.8 * syllablesPerWord - 15.59;
    }

    /**
     * Spache, a school grade up to 4: 0.121 words a sentence + 0.082 unfamiliar words in a hundred + 0.659. The revision of
     * 1974 of Spache, A New Readability Formula for Primary-Grade Reading Materials, Elementary School Journal 53 (1953).
     *
     * @param unfamiliar the words that are off the list, each counted once: {@link WordList#distinctUnfamiliar}
     */
    static OptionalDouble spache(TextCount count, int unfamiliar) {
        return count.wordsPerSentence().stream()
                .map(length -> 0.121 * length + 0.082 * percent(unfamiliar, count) + 0.659)
                .findFirst();
    }

    /**
     * The New Dale-Chall score, below 5 for grade 4 and under, 10 and up for grade 16: 0.1579 unfamiliar words in a hundred +
     * 0.0496 words a sentence, and 3.6365 more where over 5 in a hundred are unfamiliar. Chall and Dale, Readability
     * Revisited (1995).
     *
     * @param unfamiliar the words that are off the list, each as often as it stands: {@link WordList#unfamiliar}
     */
    static OptionalDouble daleChall(TextCount count, int unfamiliar) {
        return count.wordsPerSentence().stream()
                .map(length -> {
                    double percent = percent(unfamiliar, count);
                    return 0.1579 * percent + 0.0496 * length + (percent > JUMP_ABOVE_PERCENT ? 3.6365 : 0);
                })
                .findFirst();
    }

    private static OptionalDouble ofBoth(TextCount count, DoubleBinaryOperator formula) {
        OptionalDouble length = count.wordsPerSentence();
        OptionalDouble weight = count.syllablesPerWord();
        return length.isPresent() && weight.isPresent()
                ? OptionalDouble.of(formula.applyAsDouble(length.getAsDouble(), weight.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** Multiplied before it is divided, so that 5 in 100 is 5 exactly and the jump keeps to its bound. */
    private static double percent(int unfamiliar, TextCount count) {
        return 100.0 * unfamiliar / count.words();
    }
}
