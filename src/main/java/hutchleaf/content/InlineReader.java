package hutchleaf.content;

import hutchleaf.model.Inline;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** Turns the parser's inline nodes into words; what we do not print is an error. One reader for one line of words. */
final class InlineReader {
    private static final Pattern SCHEME = Pattern.compile("[A-Za-z][A-Za-z0-9+.-]*:.*|//.*");

    private final Place at;
    private final String folder;
    private final Problems problems;
    private final Quotes quotes = new Quotes();

    private InlineReader(Place at, String folder, Problems problems) {
        this.at = at;
        this.folder = folder;
        this.problems = problems;
    }

    /**
     * The words inside a block node.
     *
     * @param folder the file's folder from the content root, which links start from; empty at the root
     */
    static Words read(Node parent, Place at, String folder, Problems problems) {
        return new Words(merged(new InlineReader(at, folder, problems).children(parent)));
    }

    private List<Inline> children(Node parent) {
        List<Inline> runs = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Text plain) {
                text.append(plain.getLiteral());
            } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
                text.append(' ');
            } else {
                runs.addAll(Blanks.split(text.toString(), at, quotes, problems));
                text.setLength(0);
                runs.addAll(run(node));
            }
        }
        runs.addAll(Blanks.split(text.toString(), at, quotes, problems));
        return runs;
    }

    private List<Inline> run(Node node) {
        if (node instanceof StrongEmphasis) {
            return List.of(new Inline.Strong(children(node)));
        } else if (node instanceof Emphasis) {
            return List.of(new Inline.Emphasis(children(node)));
        } else if (node instanceof Link link) {
            return link(link);
        }
        problems.add(at, "cannot print " + name(node) + " here", "write it in plain words");
        return List.of();
    }

    private List<Inline> link(Link link) {
        String target = link.getDestination();
        if (SCHEME.matcher(target).matches()) {
            problems.add(at, "link to the network '" + target + "'", "paper has no links; name a source in sources.md");
            return children(link);
        }
        return TreePath.resolve(folder, target)
                .map(path -> List.<Inline>of(new Inline.Link(path, children(link))))
                .orElseGet(() -> {
                    problems.add(at, "link out of the content folder '" + target + "'", "link to a topic inside it");
                    return children(link);
                });
    }

    private static String name(Node node) {
        if (node instanceof Code) {
            return "code";
        } else if (node instanceof HtmlInline) {
            return "an HTML tag";
        } else if (node instanceof Image) {
            return "a picture (give it a paragraph of its own)";
        }
        return "a "
                + node.getClass()
                        .getSimpleName()
                        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                        .toLowerCase(java.util.Locale.ROOT);
    }

    private static List<Inline> merged(List<Inline> runs) {
        List<Inline> merged = new ArrayList<>();
        for (Inline run : runs) {
            int last = merged.size() - 1;
            if (run instanceof Inline.Text text && last >= 0 && merged.get(last) instanceof Inline.Text before) {
                merged.set(last, new Inline.Text(before.text() + text.text()));
            } else {
                merged.add(run);
            }
        }
        return merged;
    }
}
