package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.Node;

/** One Markdown file, read: its front matter, the blocks above the first heading, and the parts under {@code ##}. */
public final class MarkdownFile {
    private static final int SECTION = 2;
    private static final int ITEM = 3;

    private final Place at;
    private final FrontMatter front;
    private final List<Block> lead = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();

    private MarkdownFile(Place at, FrontMatter front) {
        this.at = at;
        this.front = front;
    }

    /**
     * Reads a file.
     *
     * @param file how messages name it
     * @param path where it stands from the content root, which links start from
     * @param text its text with LF line ends
     */
    public static MarkdownFile read(Place file, String path, String text, Problems problems) {
        List<String> lines = text.lines().toList();
        FrontMatter front = FrontMatter.read(file, lines, problems);
        MarkdownFile read = new MarkdownFile(file, front);
        // The front matter's lines stay as empty ones, so that the parser's line numbers are the file's.
        String body = "\n".repeat(front.lines()) + String.join("\n", lines.subList(front.lines(), lines.size()));
        read.fill(Markdown.parser().parse(body), lines, TreePath.folder(path), problems);
        return read;
    }

    private void fill(Node document, List<String> lines, String folder, Problems problems) {
        BlockReader reader = new BlockReader(at, folder, problems);
        List<Open> sections = new ArrayList<>();
        List<Block> target = lead;
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof org.commonmark.node.Heading heading) {
                Place place = reader.place(node);
                String line = lines.get(place.line() - 1).strip();
                if (!line.startsWith("#")) {
                    problems.add(
                            place,
                            "a heading underlined with --- or ===",
                            "start a heading with ##, and put an empty line before a rule");
                    continue;
                }
                String raw = line.replaceFirst("^#+\\s*", "").replaceFirst("(^|\\s+)#+$", "");
                Open opened = new Open(Heading.parse(raw, place, problems), place);
                if (heading.getLevel() == SECTION) {
                    sections.add(opened);
                } else if (heading.getLevel() == ITEM && !sections.isEmpty()) {
                    sections.get(sections.size() - 1).items.add(opened);
                } else {
                    problems.add(
                            place,
                            "the heading '" + opened.heading.text() + "' has " + heading.getLevel() + " signs",
                            "use ## for a section and ### inside it; the title stands in the front matter");
                }
                target = opened.blocks;
            } else {
                reader.read(node).ifPresent(target::add);
            }
        }
        sections.forEach(section -> parts.add(section.close(folder)));
    }

    public Place at() {
        return at;
    }

    public FrontMatter front() {
        return front;
    }

    /** What stands above the first heading. */
    public List<Block> lead() {
        return List.copyOf(lead);
    }

    List<Part> parts() {
        return List.copyOf(parts);
    }

    /** A part still being filled. */
    private static final class Open {
        private final Heading heading;
        private final Place at;
        private final List<Block> blocks = new ArrayList<>();
        private final List<Open> items = new ArrayList<>();

        Open(Heading heading, Place at) {
            this.heading = heading;
            this.at = at;
        }

        Part close(String folder) {
            return new Part(
                    heading,
                    at,
                    folder,
                    blocks,
                    items.stream().map(item -> item.close(folder)).toList());
        }
    }
}
