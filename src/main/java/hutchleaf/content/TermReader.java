package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Levels;
import hutchleaf.model.Term;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code Words}: {@code ### term (level)}, then its meaning. */
final class TermReader {
    private final Problems problems;

    TermReader(Problems problems) {
        this.problems = problems;
    }

    List<Term> read(Part section, Levels levels) {
        List<Term> terms = new ArrayList<>();
        for (Part part : section.parts()) {
            Levels own = Siblings.narrowed(part, levels, problems);
            Optional<Block.Paragraph> meaning = part.only(Block.Paragraph.class);
            if (meaning.isEmpty()) {
                problems.add(
                        part.at(),
                        "the word '" + part.heading().text() + "' has no meaning",
                        "write one paragraph under the heading");
            }
            meaning.ifPresent(
                    text -> terms.add(new Term(new Quotes().curl(part.heading().text()), own, part.at(), text.text())));
        }
        return terms;
    }
}
