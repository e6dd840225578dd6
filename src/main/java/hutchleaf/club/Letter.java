package hutchleaf.club;

import hutchleaf.model.Block;
import hutchleaf.model.Inline;
import hutchleaf.model.Library;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/** What a leader's letter may hold: no headings, and only figures, topics and facts that the library has. */
final class Letter {
    private static final String FENCE = "---";
    private static final String FACT = "fact.";
    private static final Pattern HEADING = Pattern.compile(" {0,3}#{1,6}(\\s.*)?");
    private static final Pattern UNDERLINE = Pattern.compile(" {0,3}(=+|-+)\\s*");

    private Letter() {}

    /**
     * The text of {@code club.md} with each heading of the letter turned into an empty line, and an error for it.
     *
     * @param text with LF line ends
     */
    static String withoutHeadings(Place at, String text, Problems problems) {
        String[] lines = text.split("\n", -1);
        int start = 1
                + Arrays.asList(lines)
                        .subList(Math.min(1, lines.length), lines.length)
                        .indexOf(FENCE);
        for (int index = Math.max(start, 1); index < lines.length; index++) {
            boolean underlined =
                    index > start + 1 && UNDERLINE.matcher(lines[index]).matches() && !lines[index - 1].isBlank();
            if (start > 0 && (underlined || HEADING.matcher(lines[index]).matches())) {
                problems.add(
                        at.atLine(index + 1),
                        "the letter has a heading, '" + lines[underlined ? index - 1 : index].strip() + "'",
                        "write it as a line of its own in **bold**");
                lines[index] = "";
            }
        }
        return String.join("\n", lines);
    }

    /** Reports what a block points to and the library does not have. */
    static void check(Block block, Library library, Problems problems) {
        if (block instanceof Block.Picture picture) {
            check("figure", picture.file(), library.tables().drawings().keySet(), block.at(), problems);
        }
        List<String> topics =
                library.topics().stream().map(topic -> topic.head().path()).toList();
        block.words()
                .forEach(words -> words.all().forEach(run -> {
                    if (run instanceof Inline.Link link) {
                        check("topic", link.topic(), topics, block.at(), problems);
                    } else if (run instanceof Inline.Blank blank && blank.name().startsWith(FACT)) {
                        String id = blank.name().substring(FACT.length());
                        check("fact", id, library.tables().facts().keySet(), block.at(), problems);
                    }
                }));
    }

    private static void check(String kind, String name, Collection<String> known, Place at, Problems problems) {
        if (!known.contains(name)) {
            problems.add(
                    at,
                    "no " + kind + " '" + name + "'",
                    NearMiss.of(name, known)
                            .map(near -> "did you mean '" + near + "'?")
                            .orElse("name one of the content, or write it in words"));
        }
    }
}
