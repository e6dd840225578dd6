package hutchleaf.model;

import java.util.List;

/** How many questions of each kind a set holds. */
public record Blueprint(List<Kind> kinds) {
    /**
     * One kind of question and how many of it.
     *
     * @param subjects where its questions come from; empty for questions about the member's own rabbit
     * @param count questions in a set
     */
    public record Kind(String name, List<Subject> subjects, int count) {
        public Kind {
            subjects = List.copyOf(subjects);
        }

        /** Whether a question of a topic is of this kind. */
        public boolean takes(Topic topic, JudgeQuestion question) {
            return question.about() == JudgeQuestion.About.OWN_RABBIT
                    ? subjects.isEmpty()
                    : subjects.contains(topic.head().subject());
        }
    }

    public Blueprint {
        kinds = List.copyOf(kinds);
    }

    public int questions() {
        return kinds.stream().mapToInt(Kind::count).sum();
    }
}
