package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.ThematicBreak;

/** Turns the parser's block nodes into ours; what we do not print is an error. */
final class BlockReader {
    private final Place file;
    private final String folder;
    private final Problems problems;
    private static final String LABELS = "labels";

    BlockReader(Place file, String folder, Problems problems) {
        this.file = file;
        this.folder = folder;
        this.problems = problems;
    }

    /** Where a node starts; the parser counts lines from 0. */
    Place place(Node node) {
        return node.getSourceSpans().isEmpty()
                ? file
                : file.atLine(node.getSourceSpans().get(0).getLineIndex() + 1);
    }

    /** The block, or empty when it is only a comment or was refused. */
    Optional<Block> read(Node node) {
        Place at = place(node);
        if (node instanceof Paragraph && node.getFirstChild() instanceof Image image && image.getNext() == null) {
            return picture(image, at);
        } else if (node instanceof Paragraph) {
            return Optional.of(new Block.Paragraph(at, words(node, at)));
        } else if (node instanceof BulletList) {
            return Optional.of(new Block.Bullets(at, items(node)));
        } else if (node instanceof OrderedList) {
            return Optional.of(new Block.Numbered(at, items(node)));
        } else if (node instanceof TableBlock) {
            return Optional.of(table(node, at));
        } else if (node instanceof HtmlBlock html && html.getLiteral().strip().startsWith("<!--")) {
            return Optional.empty();
        }
        problems.add(at, "cannot print " + name(node), "use paragraphs, lists, tables and figures");
        return Optional.empty();
    }

    Words words(Node node, Place at) {
        return InlineReader.read(node, at, folder, problems);
    }

    private Optional<Block> picture(Image image, Place at) {
        String caption = Optional.ofNullable(image.getTitle()).orElse("").strip();
        String alt = InlineReader.read(image, at, folder, problems).plain().strip();
        if (alt.isEmpty()) {
            problems.add(
                    at, "the figure '" + image.getDestination() + "' has no alt text", "say in the [ ] what is seen");
        }
        if (caption.isEmpty()) {
            problems.add(
                    at, "the figure '" + image.getDestination() + "' has no caption", "add it after the path: \"...\"");
        }
        String[] address = image.getDestination().split("#", 2);
        if (address.length > 1 && !address[1].equals(LABELS)) {
            problems.add(at, "'#" + address[1] + "' after a figure", "write #" + LABELS + " to have its parts named");
        }
        Block.Picture.Use use = address.length > 1 ? Block.Picture.Use.LABELS : Block.Picture.Use.PLAIN;
        Optional<String> path = TreePath.resolve("", address[0]);
        if (path.isEmpty() || image.getDestination().contains(":")) {
            problems.add(
                    at,
                    "the figure '" + image.getDestination() + "' is outside the content folder",
                    "put the drawing into figures/");
            return Optional.empty();
        }
        return Optional.of(new Block.Picture(at, path.get(), use, alt, new Quotes().curl(caption)));
    }

    private List<Block.Item> items(Node list) {
        List<Block.Item> items = new ArrayList<>();
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            Node inside = item.getFirstChild();
            if (!(inside instanceof Paragraph) || inside.getNext() != null) {
                problems.add(
                        place(item), "a list item holds more than one paragraph", "make each item one line of text");
            } else {
                items.add(new Block.Item(place(inside), words(inside, place(inside))));
            }
        }
        return items;
    }

    private Block table(Node node, Place at) {
        List<Words> head = new ArrayList<>();
        List<Block.Table.Row> rows = new ArrayList<>();
        for (Node part = node.getFirstChild(); part != null; part = part.getNext()) {
            for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
                if (part instanceof TableHead) {
                    head.addAll(cells((TableRow) row));
                } else if (part instanceof TableBody) {
                    rows.add(new Block.Table.Row(place(row), cells((TableRow) row)));
                }
            }
        }
        return new Block.Table(at, head, rows);
    }

    private List<Words> cells(TableRow row) {
        List<Words> cells = new ArrayList<>();
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            cells.add(words(cell, place(row)));
        }
        return cells;
    }

    private static String name(Node node) {
        if (node instanceof HtmlBlock) {
            return "an HTML block";
        } else if (node instanceof FencedCodeBlock || node instanceof IndentedCodeBlock) {
            return "a code block (lines that start with four spaces are one)";
        } else if (node instanceof BlockQuote) {
            return "a block quote";
        } else if (node instanceof ThematicBreak) {
            return "a rule across the page";
        }
        return "a "
                + node.getClass()
                        .getSimpleName()
                        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                        .toLowerCase(Locale.ROOT);
    }
}
