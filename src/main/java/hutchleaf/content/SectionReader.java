package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Levels;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads a section and holds it to the shape that its heading asks for. */
final class SectionReader {
    private static final List<String> LOOK_FOR = List.of("You see", "You call it", "In a breed class");
    private static final int LONGEST_HEADING = 30;
    private static final int MOST_PICTURES = 3;

    private SectionReader() {}

    static Section read(Part part, Levels levels, Problems problems) {
        part.parts()
                .forEach(child -> problems.add(
                        child.at(),
                        "a ### heading inside '" + part.heading().text() + "'",
                        "use ## here; ### belongs to Words, Cards, Judge may ask and Self-test"));
        Kind kind = kind(part, problems);
        Section section = new Section(kind, new Quotes().curl(part.heading().text()), levels, part.at(), part.blocks());
        Optional<String> fault = fault(kind, part);
        fault.ifPresent(mend -> problems.add(part.at(), "'" + part.heading().text() + "' is not in its form", mend));
        return fault.isEmpty() ? section : new Section(Kind.PROSE, section.heading(), levels, part.at(), part.blocks());
    }

    private static Kind kind(Part part, Problems problems) {
        String heading = part.heading().text();
        Optional<Kind> exact = Arrays.stream(Kind.values())
                .filter(kind -> kind != Kind.PROSE && kind.heading().equals(heading))
                .findFirst();
        if (exact.isPresent()) {
            return exact.get();
        }
        NearMiss.of(heading, meaningful())
                .ifPresent(near ->
                        problems.add(part.at(), "unknown heading '" + heading + "'", "did you mean '" + near + "'?"));
        if (heading.isEmpty() || heading.length() > LONGEST_HEADING) {
            problems.add(
                    part.at(),
                    "the heading has " + heading.length() + " letters",
                    "use 1 to " + LONGEST_HEADING + "; it hangs in a narrow column");
        }
        return Kind.PROSE;
    }

    private static List<String> meaningful() {
        List<String> headings = new ArrayList<>(List.of("Words", "Cards", "Judge may ask", "Self-test"));
        Arrays.stream(Kind.values())
                .map(Kind::heading)
                .filter(name -> !name.isEmpty())
                .forEach(headings::add);
        return headings;
    }

    /** What the author has to write instead; empty when the section is well. */
    private static Optional<String> fault(Kind kind, Part part) {
        return switch (kind) {
            case IN_SHORT, CAUTION, SAY_IT, IF_YOU_FIND_IT, OFTEN_MISSED ->
                part.only(Block.Paragraph.class).isPresent()
                        ? Optional.empty()
                        : Optional.of("write one paragraph under it");
            case SEE_IT ->
                part.blocks().stream().allMatch(Block.Picture.class::isInstance)
                                && !part.blocks().isEmpty()
                                && part.blocks().size() <= MOST_PICTURES
                        ? Optional.empty()
                        : Optional.of("put one to " + MOST_PICTURES + " figures under it and nothing else");
            case STEPS ->
                part.only(Block.Numbered.class).isPresent()
                        ? Optional.empty()
                        : Optional.of("write one numbered list under it: 1. 2. 3.");
            case LOOK_FOR ->
                part.only(Block.Table.class)
                                .filter(table -> lookForHead(Table.columns(table)))
                                .isPresent()
                        ? Optional.empty()
                        : Optional.of("write one table under it: " + String.join(" | ", LOOK_FOR));
            case PROSE -> part.blocks().isEmpty() ? Optional.of("write something under it") : Optional.empty();
        };
    }

    private static boolean lookForHead(List<String> columns) {
        return columns.equals(LOOK_FOR) || columns.equals(LOOK_FOR.subList(0, 2));
    }
}
