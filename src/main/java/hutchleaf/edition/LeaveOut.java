package hutchleaf.edition;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.Library;
import hutchleaf.model.Section;
import hutchleaf.model.Topic;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A library without some figures, for a club that does not want them: a part that held nothing else goes with them. */
public final class LeaveOut {
    private final Set<String> figures;

    private LeaveOut(Set<String> figures) {
        this.figures = figures;
    }

    /**
     * Takes figures out of a library.
     *
     * @param figures their paths from the content root
     */
    public static Library figures(Library library, Set<String> figures) {
        if (figures.isEmpty()) {
            return library;
        }
        LeaveOut out = new LeaveOut(figures);
        Library.Tables tables = library.tables();
        return new Library(
                library.topics().stream().map(out::topic).toList(),
                library.routine(),
                library.contest(),
                new Library.Tables(
                        tables.facts(),
                        tables.sources(),
                        tables.breeds(),
                        tables.colours(),
                        tables.drawings(),
                        tables.labelIt().stream()
                                .filter(row -> !figures.contains(row.figure()))
                                .toList()),
                library.wording());
    }

    private Topic topic(Topic topic) {
        Topic.Practice practice = topic.practice();
        List<Card> cards = practice.cards().stream()
                .filter(card -> card.picture().filter(this::isOut).isEmpty())
                .toList();
        return new Topic(
                topic.head(),
                topic.sections().stream()
                        .map(this::section)
                        .flatMap(Optional::stream)
                        .toList(),
                new Topic.Practice(practice.terms(), cards, practice.questions(), practice.selfTest()));
    }

    private Optional<Section> section(Section section) {
        List<Block> blocks = section.blocks().stream()
                .filter(block -> !(block instanceof Block.Picture picture && isOut(picture)))
                .toList();
        boolean emptied = blocks.isEmpty() && !section.blocks().isEmpty();
        return emptied
                ? Optional.empty()
                : Optional.of(new Section(section.kind(), section.heading(), section.levels(), section.at(), blocks));
    }

    private boolean isOut(Block.Picture picture) {
        return figures.contains(picture.file());
    }
}
