package hutchleaf.content;

import hutchleaf.model.Words;
import hutchleaf.problem.Problems;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/** The words of a heading once levels and codes are taken off: read as a line of Markdown of its own. */
final class HeadingWords {
    private HeadingWords() {}

    static Words read(Part part, Problems problems) {
        Node parsed = Markdown.parser().parse(part.heading().text()).getFirstChild();
        return parsed instanceof Paragraph
                ? InlineReader.read(parsed, part.at(), part.folder(), problems)
                : Words.of(new Quotes().curl(part.heading().text()));
    }
}
