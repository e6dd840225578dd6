package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/**
 * A part of a topic under its own heading.
 *
 * @param heading as printed in the rail
 * @param levels the levels that get it
 */
public record Section(Kind kind, String heading, Levels levels, Place at, List<Block> blocks) {
    /** The headings with a meaning of their own; all else is prose. */
    public enum Kind {
        IN_SHORT("In short"),
        SEE_IT("See it"),
        STEPS("Steps"),
        CAUTION("Caution"),
        LOOK_FOR("Look for"),
        SAY_IT("Say it"),
        IF_YOU_FIND_IT("If you find it"),
        OFTEN_MISSED("Often missed"),
        PROSE("");

        private final String heading;

        Kind(String heading) {
            this.heading = heading;
        }

        public String heading() {
            return heading;
        }
    }

    public Section {
        blocks = List.copyOf(blocks);
    }

    /** The words of the first paragraph; the content reader makes sure that there is one where the kind needs it. */
    public Words text() {
        return blocks.stream()
                .filter(Block.Paragraph.class::isInstance)
                .map(block -> ((Block.Paragraph) block).text())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(at + " has no paragraph"));
    }

    /** The pictures of the section, in order. */
    public List<Block.Picture> pictures() {
        return blocks.stream()
                .filter(Block.Picture.class::isInstance)
                .map(Block.Picture.class::cast)
                .toList();
    }

    /** The items of the first numbered list; the content reader makes sure that there is one where the kind needs it. */
    public List<Words> steps() {
        return blocks.stream()
                .filter(Block.Numbered.class::isInstance)
                .map(block -> block.words().toList())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(at + " has no numbered list"));
    }

    /** The items of the lists that a level gets under a heading; none where it has none. */
    static List<Words> items(List<Section> sections, String heading, Level level) {
        return sections.stream()
                .filter(section ->
                        section.heading().equals(heading) && section.levels().holds(level))
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Bullets.class::isInstance)
                .flatMap(Block::words)
                .toList();
    }
}
