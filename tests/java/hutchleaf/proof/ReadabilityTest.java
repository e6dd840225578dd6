package hutchleaf.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published and worked scores. [S]: the source was seen; [R]: reckoned again by hand; [M]: cited from memory. */
final class ReadabilityTest {
    private static final Offset<Double> CLOSE = within(0.0005);

    /** What a published figure of two decimals may be off by. */
    private static final Offset<Double> TWO_PLACES = within(0.005);

    @ParameterizedTest(name = "{5}")
    @CsvSource({
        "1, 6, 6, 116.145, -1.450, the cat on the mat: published 116 [M] [R]",
        "1, 13, 24, 37.455, 11.265, the platypus: published 11.3 [S] and 37.5 [M] [R]",
        "1, 1, 1, 121.220, -3.400, the easiest text: published 121.22 [S] and -3.40 [M] [R]",
        "34, 432, 607, 75.068, 5.945, an online tool with its counts [S] [R]",
        "16, 372, 519, 65.206, 9.940, the long text of a Python library's tests with its counts [S] [R]",
        "5, 100, 150, 59.635, 9.910, arithmetic [R]"
    })
    void bothFormulasOfFleschGiveTheWorkedScores(
            int sentences, int words, int syllables, double ease, double grade, String source) {
        TextCount count = new TextCount(words, sentences, syllables);

        assertThat(score(Readability.fleschReadingEase(count))).as(source).isCloseTo(ease, CLOSE);
        assertThat(score(Readability.fleschKincaid(count))).as(source).isCloseTo(grade, CLOSE);
    }

    /** Published 75.10 and 5.90 by a tool that rounds on the way [S]. */
    @Test
    void thePublishedScoresOfAnOnlineToolAreMetWithinItsRounding() {
        TextCount count = new TextCount(432, 34, 607);

        assertThat(score(Readability.fleschReadingEase(count))).isCloseTo(75.10, within(0.06));
        assertThat(score(Readability.fleschKincaid(count))).isCloseTo(5.90, within(0.06));
    }

    /** Published 64.75 and 10.0 from the averages 23.3 and 1.4, which are 372 / 16 and 519 / 372 rounded [S] [R]. */
    @Test
    void averagesThatAreRoundedFirstGiveThePublishedScores() {
        assertThat(Readability.fleschReadingEase(23.3, 1.4))
                .isCloseTo(64.7455, CLOSE)
                .isCloseTo(64.75, TWO_PLACES);
        assertThat(Readability.fleschKincaid(23.3, 1.4))
                .isCloseTo(10.017, CLOSE)
                .isCloseTo(10.0, within(0.05));
    }

    /** End to end: published 116 [M], and 11.3 [S] with 37.5 [M]. */
    @Test
    void theTwoPublishedSentencesGetTheirScoresFromTheirText() {
        TextCount cat = TextCount.of("The cat sat on the mat.");
        TextCount platypus =
                TextCount.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.");

        assertThat(score(Readability.fleschReadingEase(cat))).isCloseTo(116, within(0.5));
        assertThat(score(Readability.fleschKincaid(platypus))).isCloseTo(11.3, within(0.05));
        assertThat(score(Readability.fleschReadingEase(platypus))).isCloseTo(37.5, within(0.05));
    }

    /** Spache 1974, worked [R]. */
    @ParameterizedTest
    @CsvSource({"100, 12, 8, 2.3233", "30, 2, 6, 4.114"})
    void spacheGivesTheWorkedGrades(int words, int sentences, int unfamiliar, double grade) {
        assertThat(score(Readability.spache(new TextCount(words, sentences, 0), unfamiliar)))
                .isCloseTo(grade, CLOSE);
    }

    /** New Dale-Chall, worked [R]: at 5 in a hundred there is no jump, above there is. */
    @ParameterizedTest
    @CsvSource({"100, 5, 5, 1.7815", "100, 5, 6, 5.5759", "30, 2, 6, 7.5385"})
    void daleChallJumpsAboveFivePerCentOnly(int words, int sentences, int unfamiliar, double score) {
        assertThat(score(Readability.daleChall(new TextCount(words, sentences, 0), unfamiliar)))
                .isCloseTo(score, CLOSE);
    }

    /** Two packages in print give NaN here [S]. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0, 1", "5, 0"})
    void aTextWithoutWordsOrSentencesHasNoScore(int words, int sentences) {
        TextCount count = new TextCount(words, sentences, 0);

        assertThat(Readability.fleschReadingEase(count)).isEmpty();
        assertThat(Readability.fleschKincaid(count)).isEmpty();
        assertThat(Readability.spache(count, 0)).isEmpty();
        assertThat(Readability.daleChall(count, 0)).isEmpty();
    }

    @Test
    void tradeWordsCountInTheSentenceAndNotInTheSyllables() {
        TextCount count = TextCount.of("Check the teeth for malocclusion.", "malocclusion"::equals);

        assertThat(score(Readability.fleschKincaid(count))).isCloseTo(0.39 * 5 + 11.8 - 15.59, CLOSE);
    }

    private static double score(OptionalDouble score) {
        assertThat(score).isPresent();
        return score.getAsDouble();
    }
}
