package hutchleaf.content;

import hutchleaf.model.Levels;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Watches that things of one name have levels that do not overlap, so that an edition prints just one of them. */
final class Siblings {
    private record Seen(Levels levels, Place at) {}

    private final Problems problems;
    private final Map<String, List<Seen>> seen = new HashMap<>();

    Siblings(Problems problems) {
        this.problems = problems;
    }

    /** Notes one more; reports an earlier one of the same name and kind whose levels overlap. */
    void note(String kind, String name, Levels levels, Place at) {
        List<Seen> same = seen.computeIfAbsent(kind + ' ' + name, key -> new ArrayList<>());
        same.stream()
                .filter(other -> other.levels().overlaps(levels))
                .findFirst()
                .ifPresent(other -> problems.add(
                        at,
                        "the " + kind + " '" + name + "' (" + levels + ") overlaps the one at " + other.at() + " ("
                                + other.levels() + ")",
                        "give each its own levels or take one out"));
        same.add(new Seen(levels, at));
    }

    /** The levels of a part: its own, which must lie within its parent's, or its parent's. */
    static Levels narrowed(Part part, Levels parent, Problems problems) {
        Levels own = part.heading().levels().orElse(parent);
        // "from junior" under "primary to intermediate" means up to where the parent ends.
        Levels cut = own.to().compareTo(parent.to()) > 0
                        && own.to() == Levels.ALL.to()
                        && own.from().compareTo(parent.to()) <= 0
                ? new Levels(own.from(), parent.to())
                : own;
        if (!cut.within(parent)) {
            problems.add(
                    part.at(),
                    "'" + part.heading().text() + "' is for " + own + ", but what it stands under is for " + parent,
                    "narrow it; a part can't reach levels its parent leaves out");
            return parent;
        }
        return cut;
    }
}
