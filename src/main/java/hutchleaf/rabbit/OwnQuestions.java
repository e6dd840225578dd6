package hutchleaf.rabbit;

import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import java.util.List;

/** Questions a judge is likely to ask about the member's own rabbit, with the points of the answer filled in for it. */
public final class OwnQuestions {
    private OwnQuestions() {}

    /** 5 questions for primary, 6 for junior, 8 for the older levels. */
    public static List<JudgeQuestion> of(Findings findings, Level level) {
        return List.of();
    }
}
