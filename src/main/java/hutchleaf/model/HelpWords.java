package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the talk-through sheet and the cue card say beside the words of the stops.
 *
 * @param sections as they are written: lists, and tables of the stops
 * @param lines the rows of those tables
 */
public record HelpWords(List<Section> sections, List<Line> lines) {
    /** The parts of a talk-through sheet. */
    public enum Heading {
        BEFORE("Before the day"),
        MEMBER("For you"),
        HELPER("For your helper"),
        STOPS("At each stop");

        private final String text;

        Heading(String text) {
            this.text = text;
        }

        /** As it is written and printed. */
        public String text() {
            return text;
        }

        public static Optional<Heading> of(String text) {
            return Arrays.stream(values())
                    .filter(heading -> heading.text.equals(text))
                    .findFirst();
        }

        public static List<String> texts() {
            return Arrays.stream(values()).map(Heading::text).toList();
        }
    }

    /**
     * A stop at some levels: the member directs, another pair of hands does.
     *
     * @param say what the member says to the helper
     * @param helper what the helper minds, also unasked
     * @param look what the member looks for
     * @param key the key words of the cue card
     */
    public record Line(int stop, Levels levels, Words say, Words helper, Words look, String key, Place at) {}

    public HelpWords {
        sections = List.copyOf(sections);
        lines = List.copyOf(lines);
    }

    /** The line of a stop at a level. */
    public Optional<Line> line(int stop, Level level) {
        return lines.stream()
                .filter(line -> line.stop() == stop && line.levels().holds(level))
                .findFirst();
    }

    /** The lines of a list that a level gets; none where it has none. */
    public List<Words> list(Heading heading, Level level) {
        return Section.items(sections, heading.text(), level);
    }
}
