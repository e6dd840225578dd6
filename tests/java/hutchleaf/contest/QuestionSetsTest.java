package hutchleaf.contest;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.contest.QuestionSet.Asked;
import hutchleaf.edition.Edition;
import hutchleaf.model.Blueprint;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Topic;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.util.List;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

final class QuestionSetsTest {
    private final Problems problems = new Problems();

    @RepeatedTest(25)
    void setsShareNoQuestionAndFollowTheBlueprint(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition() * 7919;
        Edition edition = Samples.edition(Level.INTERMEDIATE, 4, Levels.ALL);

        List<QuestionSet> sets = QuestionSets.draw(edition, 3, seed, problems);

        assertThat(problems.sorted()).as("seed %s", seed).isEmpty();
        assertThat(sets).extracting(QuestionSet::letter).containsExactly("A", "B", "C");
        assertThat(sets.stream().flatMap(set -> set.questions().stream()))
                .as("seed %s", seed)
                .doesNotHaveDuplicates();
        for (QuestionSet set : sets) {
            for (Blueprint.Kind kind : edition.library().contest().blueprint().kinds()) {
                assertThat(set.questions())
                        .as("seed %s, set %s, kind %s", seed, set.letter(), kind.name())
                        .filteredOn(asked -> kind.takes(topic(edition, asked), asked.question()))
                        .hasSize(kind.count());
            }
        }
    }

    @Test
    void theSameSeedGivesTheSameSets() {
        Edition edition = Samples.edition(Level.SENIOR, 4, Levels.ALL);

        assertThat(QuestionSets.draw(edition, 3, 11, problems)).isEqualTo(QuestionSets.draw(edition, 3, 11, problems));
        assertThat(QuestionSets.draw(edition, 3, 11, problems))
                .isNotEqualTo(QuestionSets.draw(edition, 3, 12, problems));
    }

    @Test
    void aSetTakesItsHealthQuestionsFromTwoTopicsWhileItCan() {
        Edition edition = Samples.edition(Level.JUNIOR, 9, Levels.ALL);

        QuestionSets.draw(edition, 3, 5, problems)
                .forEach(set -> assertThat(set.questions())
                        .as("set %s", set.letter())
                        .extracting(Asked::topic)
                        .doesNotHaveDuplicates());
    }

    @Test
    void everyQuestionIsForTheLevel() {
        Edition edition = Edition.of(Samples.library(), Level.JUNIOR, new Problems());

        QuestionSets.draw(edition, 1, 3, problems).stream()
                .flatMap(set -> set.questions().stream())
                .forEach(asked -> assertThat(asked.question().levels().holds(Level.JUNIOR))
                        .as(asked.question().at().toString())
                        .isTrue());
    }

    @Test
    void aTreeWithTooFewQuestionsIsToldWhichAreMissing() {
        Edition edition = Samples.edition(Level.SENIOR, 2, new Levels(Level.PRIMARY, Level.SENIOR));

        assertThat(QuestionSets.draw(edition, 3, 1, problems)).isEmpty();
        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .contains(
                        "content/contest/questions.md: the kind 'health' lacks 2 questions for senior: 3 sets need 6, the"
                                + " tree has 4; write 2 more under ## Judge may ask for senior, in content/health",
                        "content/contest/questions.md: the kind 'own rabbit' lacks 3 questions for senior: 3 sets need"
                                + " 3, the tree has 0; write 3 more under ## Judge may ask for senior, mark it (own"
                                + " rabbit)");
    }

    private static Topic topic(Edition edition, Asked asked) {
        return edition.library().topic(asked.topic().path()).orElseThrow();
    }
}
