package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.model.Level;
import hutchleaf.model.SelfTestItem;
import hutchleaf.page.GuideView.AloudItem;
import hutchleaf.page.GuideView.GapItem;
import hutchleaf.page.GuideView.KeyRow;
import hutchleaf.page.GuideView.TestView;
import hutchleaf.page.GuideView.Tick;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Picks the self-test of a level and numbers it with its key: choices first, then gaps, then what is said aloud. */
final class SelfTestPages {
    private record Picked<T>(T item, String anchor) {}

    private final Markup markup;
    private final List<KeyRow> key = new ArrayList<>();
    private int no;
    private int points;

    private SelfTestPages(Markup markup) {
        this.markup = markup;
    }

    static TestView of(Edition edition, Markup markup) {
        return new SelfTestPages(markup).test(edition);
    }

    private TestView test(Edition edition) {
        boolean primary = edition.level() == Level.PRIMARY;
        List<Tick> ticks = pick(edition, SelfTestItem.TickOne.class, primary ? 6 : 12).stream()
                .map(this::tick)
                .toList();
        List<GapItem> gaps = pick(edition, SelfTestItem.Gap.class, primary ? 3 : 8).stream()
                .map(this::gap)
                .toList();
        List<AloudItem> aloud = pick(edition, SelfTestItem.Aloud.class, primary ? 1 : 2).stream()
                .map(this::aloud)
                .toList();
        return new TestView(ticks, gaps, aloud, List.copyOf(key), points);
    }

    /** One item of each leaf, then a second of each, and so on, until there are enough; in the order of the guide. */
    private static <T extends SelfTestItem> List<Picked<T>> pick(Edition edition, Class<T> kind, int most) {
        List<List<Picked<T>>> byLeaf =
                edition.all().map(leaf -> items(leaf, kind)).toList();
        List<Picked<T>> chosen = new ArrayList<>();
        for (int round = 0; chosen.size() < most && round < 3; round++) {
            int turn = round;
            List<Picked<T>> candidates = byLeaf.stream()
                    .filter(items -> items.size() > turn)
                    .map(items -> items.get(turn))
                    .toList();
            chosen.addAll(spread(candidates, most - chosen.size()));
        }
        List<Picked<T>> inOrder = byLeaf.stream().flatMap(List::stream).toList();
        return inOrder.stream().filter(chosen::contains).toList();
    }

    /** So many of the candidates, evenly from first to last. */
    private static <T> List<T> spread(List<T> candidates, int most) {
        if (candidates.size() <= most) {
            return candidates;
        }
        return Stream.iterate(0, index -> index + 1)
                .limit(most)
                .map(index -> candidates.get(index * candidates.size() / most))
                .toList();
    }

    private static <T extends SelfTestItem> List<Picked<T>> items(Leaf leaf, Class<T> kind) {
        return leaf.practice().selfTest().stream()
                .filter(kind::isInstance)
                .map(item -> new Picked<>(kind.cast(item), leaf.head().anchor()))
                .toList();
    }

    private Tick tick(Picked<SelfTestItem.TickOne> picked) {
        SelfTestItem.TickOne item = picked.item();
        no++;
        points++;
        key.add(new KeyRow(
                no, markup.write(item.choices().get(item.right())), markup.write(item.why()), picked.anchor()));
        return new Tick(no, markup.write(item.question()), markup.writeAll(item.choices()));
    }

    private GapItem gap(Picked<SelfTestItem.Gap> picked) {
        no++;
        points++;
        key.add(new KeyRow(
                no,
                markup.write(picked.item().answer()),
                markup.write(picked.item().why()),
                picked.anchor()));
        return new GapItem(no, markup.gap(picked.item().question()));
    }

    private AloudItem aloud(Picked<SelfTestItem.Aloud> picked) {
        no++;
        points += picked.item().points().size();
        key.add(new KeyRow(
                no,
                new Xml("One point for each box ticked."),
                markup.write(picked.item().why()),
                picked.anchor()));
        return new AloudItem(
                no,
                markup.write(picked.item().question()),
                markup.writeAll(picked.item().points()));
    }
}
