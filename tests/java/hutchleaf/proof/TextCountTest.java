package hutchleaf.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class TextCountTest {
    /** Published example of Flesch Reading Ease 116 [M]. */
    @Test
    void theCatOnTheMatHasSixWordsOfOneSyllable() {
        assertThat(TextCount.of("The cat sat on the mat.")).isEqualTo(new TextCount(6, 1, 6));
    }

    /** Published with 13 words and 24 syllables [S]. */
    @Test
    void thePlatypusHasThirteenWordsOfTwentyFourSyllables() {
        assertThat(TextCount.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."))
                .isEqualTo(new TextCount(13, 1, 24));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  \n", "\u2014", "- \u2013 ...", "()"})
    void aTextWithoutWordsHasNoSentence(String text) {
        assertThat(TextCount.of(text)).isEqualTo(TextCount.NONE);
    }

    /** Flesch's step list [S]: whatever stands between two spaces is one word; a dash parts two. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "don't lift it; 3",
                "a well-made hutch; 3",
                "3.5 lb; 2",
                "1,000 breeds; 2",
                "feed & water; 3",
                "$5 a bale; 3",
                "at 6\u20138 weeks; 3",
                "the doe\u2014a calm one; 5",
                "the doe \u2013 a calm one; 5",
                "the doe -- a calm one; 5",
                "\u201cHold it (gently)!\u201d; 3",
                "and/or; 1"
            })
    void aWordStandsBetweenTwoSpaces(String text, int words) {
        assertThat(TextCount.of(text).words()).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Look. Feel! Why? | 3",
                "It weighs 3.5 pounds. | 1",
                "It weighs 3 lb. and eats well. | 1",
                "It weighs 3 lb. The doe weighs more. | 2",
                "It weighs 3 lb. 4 oz. today. | 1",
                "Feed greens, e.g. Kale or mint. | 1",
                "Ask Dr. Hare about No. 7. | 1",
                "The show opens at 9 a.m. on Saturday. | 1",
                "The show opens at 9 a.m. Come early. | 2",
                "Is it clean?! | 1",
                "Is it clean ? Yes. | 2",
                "\u201cStop!\u201d The judge waits. | 2",
                "Wait... Now turn it over. | 2",
                "The last has no mark | 1",
                "One ends. The last has no mark | 2",
                "Two eyes: both clear; both bright \u2013 no film. | 1"
            })
    void aSentenceEndsAtItsMarkAndNotInANumberOrAfterAnAbbreviation(String text, int sentences) {
        assertThat(TextCount.of(text).sentences()).as(text).isEqualTo(sentences);
    }

    @Test
    void tradeWordsMakeASentenceLongerAndNoWordHarder() {
        Set<String> trade = Set.of("malocclusion", "dewlap");

        TextCount count = TextCount.of("Check the teeth for malocclusion.", trade::contains);

        assertThat(count).isEqualTo(new TextCount(5, 1, 4, 1));
        assertThat(count.wordsPerSentence()).hasValue(5);
        assertThat(count.syllablesPerWord()).hasValue(1);
    }

    @Test
    void aTextOfTradeWordsAloneHasNoAverageOfSyllables() {
        TextCount count = TextCount.of("Malocclusion.", word -> true);

        assertThat(count.wordsPerSentence()).hasValue(1);
        assertThat(count.syllablesPerWord()).isEmpty();
    }

    @Test
    void twoTextsAddUp() {
        TextCount both = TextCount.of("Look here.").plus(TextCount.of("The rabbit sits.", "rabbit"::equals));

        assertThat(both).isEqualTo(new TextCount(5, 2, 4, 1));
        assertThat(both.plus(TextCount.NONE)).isEqualTo(both);
    }

    @Test
    void aCountThatNoTextCanHaveIsRefused() {
        assertThatThrownBy(() -> new TextCount(1, 1, 1, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no such text: 1 words, 1 sentences, 1 syllables, 2 trade words");
    }
}
