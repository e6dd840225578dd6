package hutchleaf.contest;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import org.junit.jupiter.api.Test;

final class QuestionMarksTest {
    @Test
    void theSheetSaysHowManyQuestionsCountAndForHowMuch() {
        assertThat(of(Level.JUNIOR)).isEqualTo(new QuestionMarks(5, 2));
        assertThat(of(Level.INTERMEDIATE)).isEqualTo(new QuestionMarks(6, 2));
        assertThat(of(Level.SENIOR)).isEqualTo(new QuestionMarks(5, 3));
    }

    @Test
    void aFullAnswerGetsAllPointsAndPartOfOneAtLeastOne() {
        QuestionMarks three = new QuestionMarks(5, 3);

        assertThat(three.awarded(0, 3)).isZero();
        assertThat(three.awarded(1, 3)).isEqualTo(1);
        assertThat(three.awarded(2, 3)).isEqualTo(2);
        assertThat(three.awarded(3, 3)).isEqualTo(3);
        assertThat(three.awarded(1, 1)).isEqualTo(3);
        assertThat(three.awarded(1, 5)).isEqualTo(1);
        assertThat(three.awarded(4, 5)).isEqualTo(2);
        assertThat(three.awarded(7, 5)).isEqualTo(3);
    }

    @Test
    void wordsOfAnotherFormGiveNoMarks() {
        assertThat(QuestionMarks.read("as many as you like")).isEmpty();
        assertThat(QuestionMarks.read("4, 1 point each")).contains(new QuestionMarks(4, 1));
    }

    private static QuestionMarks of(Level level) {
        return QuestionMarks.of(Samples.library().contest().sheetFor(level).orElseThrow())
                .orElseThrow();
    }
}
