package hutchleaf.proof;

import hutchleaf.model.Levels;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import java.util.regex.Pattern;

/** One line of words as a reader meets it: what it is, who gets it, where it stands. */
record Passage(Topic topic, Role role, Levels levels, Place at, Words words, String text) {
    private static final Pattern BLANK = Pattern.compile("\\{[^}]*}");

    /** What a line of words is on the page. */
    enum Role {
        TITLE,
        HEADING,
        IN_SHORT,
        STEP,
        CAUTION,
        SAY_IT,
        IF_YOU_FIND_IT,
        OFTEN_MISSED,
        PROSE,
        HEAD_CELL,
        CELL,
        CAPTION,
        ALT,
        TERM,
        MEANING,
        QUESTION,
        ANSWER,
        JUDGE_QUESTION,
        POINT,
        SELF_TEST,
        CHOICE,
        WHY;

        /** Whether it is read as running text: no titles, captions or cells (Flesch, J. Applied Psychology 32, 1948). */
        boolean runs() {
            return switch (this) {
                case IN_SHORT, STEP, CAUTION, SAY_IT, IF_YOU_FIND_IT, OFTEN_MISSED, PROSE -> true;
                case TITLE,
                        HEADING,
                        HEAD_CELL,
                        CELL,
                        CAPTION,
                        ALT,
                        TERM,
                        MEANING,
                        QUESTION,
                        ANSWER,
                        JUDGE_QUESTION,
                        POINT,
                        SELF_TEST,
                        CHOICE,
                        WHY -> false;
            };
        }
    }

    Passage(Topic topic, Role role, Levels levels, Place at, Words words) {
        this(topic, role, levels, at, words, BLANK.matcher(words.plain()).replaceAll("#"));
    }
}
