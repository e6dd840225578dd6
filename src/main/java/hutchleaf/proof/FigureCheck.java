package hutchleaf.proof;

import hutchleaf.model.Block;
import hutchleaf.model.Library;
import hutchleaf.model.Topic;
import hutchleaf.problem.Place;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A figure that no page shows is found. */
final class FigureCheck implements Check {
    @Override
    public void check(Material material, Findings findings) {
        Library library = material.library();
        Set<String> used =
                library.topics().stream().flatMap(FigureCheck::pictures).collect(Collectors.toSet());
        library.tables().drawings().keySet().stream()
                .filter(file -> !used.contains(file))
                .forEach(file -> findings.error(
                        Rule.FIGURE_UNUSED,
                        Place.whole(Roots.of(library) + file),
                        "no page shows this figure",
                        "use it, or take it out"));
    }

    private static Stream<String> pictures(Topic topic) {
        Stream<Block.Picture> inText = topic.sections().stream().flatMap(section -> section.pictures().stream());
        Stream<Block.Picture> onCards =
                topic.practice().cards().stream().map(card -> card.picture()).flatMap(Optional::stream);
        return Stream.concat(inText, onCards).map(Block.Picture::file);
    }
}
