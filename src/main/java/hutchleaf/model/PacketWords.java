package hutchleaf.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a member's packet says beside the member's own words.
 *
 * @param sections each with one list, under one of the {@link Heading}s
 */
public record PacketWords(List<Section> sections) {
    /** The lists that a packet prints. */
    public enum Heading {
        HOW_TO_USE("How to use it"),
        GROWN_UP("For the grown-up"),
        WITH_THE_RABBIT("With the rabbit"),
        PACK("Pack"),
        BEFORE("Before you leave"),
        AT_THE_SHOW("At the show"),
        HOME("When you come home"),
        WATCH_FOR("What to watch for"),
        LEARNED("What I learned");

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

    public PacketWords {
        sections = List.copyOf(sections);
    }

    /** The lines a level gets under a heading; none where it has none. */
    public List<Words> lines(Heading heading, Level level) {
        return Section.items(sections, heading.text(), level);
    }
}
