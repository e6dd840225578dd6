package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What the template of the question sets sees.
 *
 * @param scoring how answers are scored; absent where there are no points
 * @param count how many sets there are, in words
 */
record QuestionsView(Look look, Optional<Marks> scoring, String count, List<SetView> sets) {
    /**
     * How answers are scored, in words.
     *
     * @param ask which questions to ask
     * @param scale what a question of the common kind gets
     */
    record Marks(String ask, String scale) {}

    /**
     * A set on its page.
     *
     * @param grid the grid whose contestants its boxes are for, where there is more than one
     */
    record SetView(String letter, Optional<String> grid, List<QuestionView> questions) {}

    /**
     * A question with its points.
     *
     * @param need how many points are enough, and what they get where it is not the common rule
     * @param stop where it belongs in the routine
     * @param page where the guide answers it
     */
    record QuestionView(
            int no, Xml question, String need, List<Xml> points, Optional<Integer> stop, Optional<Integer> page) {}
}
