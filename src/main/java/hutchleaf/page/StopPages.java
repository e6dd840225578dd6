package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.edition.Stop;
import hutchleaf.model.Block;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Section.Kind;
import hutchleaf.page.GuideView.Hop;
import hutchleaf.page.GuideView.Scored;
import hutchleaf.page.GuideView.SectionView;
import hutchleaf.page.GuideView.Spoken;
import hutchleaf.page.GuideView.StopView;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes the views of the stops: the left page for the hands, the right page for the voice. */
final class StopPages {
    private static final Set<Kind> PLACED = Set.of(
            Kind.IN_SHORT,
            Kind.SEE_IT,
            Kind.STEPS,
            Kind.CAUTION,
            Kind.LOOK_FOR,
            Kind.SAY_IT,
            Kind.IF_YOU_FIND_IT,
            Kind.OFTEN_MISSED);

    /** More would crowd the page; all of them stand at the back with their points. */
    private static final int MOST_ASKED = 3;

    private final Edition edition;
    private final Markup markup;
    private final BlockViews blocks;
    private final FigureViews figures;

    StopPages(Edition edition, Markup markup, BlockViews blocks, FigureViews figures) {
        this.edition = edition;
        this.markup = markup;
        this.blocks = blocks;
        this.figures = figures;
    }

    List<StopView> views() {
        return edition.stops().stream().map(this::stop).toList();
    }

    private StopView stop(Stop stop) {
        Leaf leaf = stop.leaf();
        List<Hop> hops = edition.stops().stream()
                .map(other -> new Hop(
                        other.station().no(),
                        other.station().no() < stop.station().no(),
                        other.equals(stop)))
                .toList();
        List<SectionView> more = leaf.sections().stream()
                .filter(section -> !PLACED.contains(section.kind()))
                .map(blocks::section)
                .toList();
        return new StopView(
                stop.station().no(),
                leaf.head().anchor(),
                stop.station().name(),
                hops,
                blocks.text(leaf, Kind.IN_SHORT).orElse(new Xml("")),
                leaf.section(Kind.SEE_IT)
                        .map(section -> figures.row(section.pictures()))
                        .orElse(List.of()),
                leaf.section(Kind.STEPS)
                        .map(section -> markup.writeAll(section.steps()))
                        .orElse(List.of()),
                more,
                leaf.section(Kind.CAUTION)
                        .map(section -> markup.firstSentenceStrong(section.text()))
                        .orElse(new Xml("")),
                spoken(leaf),
                stop.scored().map(block -> scored(stop, block)),
                leaf.head().credits().at().toString());
    }

    private Spoken spoken(Leaf leaf) {
        Optional<Block.Table> table = leaf.section(Kind.LOOK_FOR)
                .map(section -> (Block.Table) section.blocks().get(0));
        boolean starred = table.stream()
                .flatMap(Block.Table::words)
                .anyMatch(words -> words.plain().endsWith("*"));
        return new Spoken(
                table.map(found -> blocks.table(found, 1)),
                starred,
                blocks.text(leaf, Kind.SAY_IT).orElse(new Xml("")),
                blocks.text(leaf, Kind.IF_YOU_FIND_IT),
                blocks.text(leaf, Kind.OFTEN_MISSED),
                blocks.questions(leaf).stream().limit(MOST_ASKED).toList());
    }

    private static Scored scored(Stop stop, ScoreSheet.Block block) {
        List<String> others = block.stops().stream()
                .filter(no -> no != stop.station().no())
                .map(String::valueOf)
                .toList();
        String with = others.size() == 1
                ? "this stop and stop " + others.get(0) + " together"
                : "this stop with stops " + String.join(", ", others.subList(0, others.size() - 1)) + " and "
                        + others.get(others.size() - 1);
        return new Scored(block.letter(), with, block.lookingFor(), block.hands(), block.voice());
    }
}
