package hutchleaf.proof;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** All that the rules read: the library, each edition of it, and every line of words. */
record Material(
        Library library,
        List<Edition> editions,
        List<Passage> passages,
        Map<String, List<Passage>> byTopic,
        Proof.Settings settings) {
    static Material of(Library library, List<Edition> editions, Proof.Settings settings) {
        List<Passage> passages = Passages.of(library);
        Map<String, List<Passage>> byTopic = passages.stream()
                .collect(Collectors.groupingBy(passage -> passage.topic().head().path()));
        return new Material(library, List.copyOf(editions), passages, byTopic, settings);
    }

    /** What a level reads of a topic. */
    List<Passage> of(Leaf leaf, Level level) {
        return byTopic.getOrDefault(leaf.head().path(), List.of()).stream()
                .filter(passage -> passage.levels().holds(level))
                .toList();
    }
}
