package hutchleaf.contest;

import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Topic;
import java.util.List;

/**
 * The questions that everyone in one class is asked.
 *
 * @param letter A for the first
 */
public record QuestionSet(String letter, List<Asked> questions) {
    /** A question and the topic that answers it. */
    public record Asked(JudgeQuestion question, Topic.Head topic) {}

    public QuestionSet {
        questions = List.copyOf(questions);
    }
}
