package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.JudgeQuestion.About;
import hutchleaf.model.Levels;
import hutchleaf.model.Words;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code Judge may ask}: {@code ### question (own rabbit, any 2)}, then a list of the points. */
final class QuestionReader {
    private static final String ANY = "any ";

    private final Problems problems;

    QuestionReader(Problems problems) {
        this.problems = problems;
    }

    List<JudgeQuestion> read(Part section, Levels levels) {
        List<JudgeQuestion> questions = new ArrayList<>();
        Siblings siblings = new Siblings(problems);
        for (Part part : section.parts()) {
            Levels own = Siblings.narrowed(part, levels, problems);
            siblings.note("question", part.heading().text(), own, part.at());
            List<Words> points = part.only(Block.Bullets.class)
                    .map(list -> list.words().toList())
                    .orElse(List.of());
            if (points.isEmpty()) {
                problems.add(
                        part.at(),
                        "the question '" + part.heading().text() + "' has no points",
                        "list with - what an answer must contain");
                continue;
            }
            About about = part.heading().options().contains("own rabbit") ? About.OWN_RABBIT : About.RABBITS;
            questions.add(new JudgeQuestion(
                    HeadingWords.read(part, problems), own, part.at(), about, enough(part, points.size()), points));
        }
        return questions;
    }

    private int enough(Part part, int points) {
        Optional<String> any = part.heading().options().stream()
                .filter(option -> option.startsWith(ANY))
                .map(option -> option.substring(ANY.length()))
                .findFirst();
        if (any.isEmpty()) {
            return points;
        }
        int enough = any.get().length() > 3 ? 0 : Integer.parseInt(any.get());
        if (enough < 1 || enough > points) {
            problems.add(part.at(), "'any " + any.get() + "' of " + points + " points", "ask for 1 to " + points);
            return points;
        }
        return enough;
    }
}
