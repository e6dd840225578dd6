package hutchleaf.edition;

import hutchleaf.model.Level;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Topic;
import java.util.List;
import java.util.Optional;

/** A topic as one level sees it: only the sections, words, cards and questions that are for it. */
public record Leaf(Topic.Head head, List<Section> sections, Topic.Practice practice) {
    public Leaf {
        sections = List.copyOf(sections);
    }

    static Leaf of(Topic topic, Level level) {
        Topic.Practice all = topic.practice();
        return new Leaf(
                topic.head(),
                topic.sections().stream()
                        .filter(section -> section.levels().holds(level))
                        .toList(),
                new Topic.Practice(
                        all.terms().stream()
                                .filter(term -> term.levels().holds(level))
                                .toList(),
                        all.cards().stream()
                                .filter(card -> card.levels().holds(level))
                                .toList(),
                        all.questions().stream()
                                .filter(question -> question.levels().holds(level))
                                .toList(),
                        all.selfTest().stream()
                                .filter(item -> item.levels().holds(level))
                                .toList()));
    }

    /** The section of a kind; siblings of one heading never overlap, so there is one at most. */
    public Optional<Section> section(Kind kind) {
        return sections.stream().filter(section -> section.kind() == kind).findFirst();
    }
}
