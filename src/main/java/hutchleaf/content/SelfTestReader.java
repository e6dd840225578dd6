package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Inline;
import hutchleaf.model.Levels;
import hutchleaf.model.SelfTestItem;
import hutchleaf.model.Words;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Reads {@code Self-test}: one right choice in bold, a gap with its answer in bold, or a list to say aloud; then why. */
final class SelfTestReader {
    private static final String MEND =
            "write a - list (bold for the right choice, or none to say aloud) or, for a ___ gap, "
                    + "the **answer**; then a paragraph with the reason";

    private final Problems problems;

    SelfTestReader(Problems problems) {
        this.problems = problems;
    }

    List<SelfTestItem> read(Part section, Levels levels) {
        List<SelfTestItem> items = new ArrayList<>();
        for (Part part : section.parts()) {
            Levels own = Siblings.narrowed(part, levels, problems);
            Optional<SelfTestItem> item = item(part, own);
            item.ifPresent(items::add);
            if (item.isEmpty()) {
                problems.add(part.at(), "the self-test item '" + part.heading().text() + "' is not in its form", MEND);
            }
        }
        return items;
    }

    private Optional<SelfTestItem> item(Part part, Levels levels) {
        List<Block> blocks = part.blocks();
        if (blocks.size() != 2 || !(blocks.get(1) instanceof Block.Paragraph why)) {
            return Optional.empty();
        }
        Words question = HeadingWords.read(part, problems);
        boolean gap = part.heading().text().contains(SelfTestItem.Gap.GAP);
        if (blocks.get(0) instanceof Block.Paragraph answer && gap && startsStrong(answer.text())) {
            return Optional.of(new SelfTestItem.Gap(question, levels, part.at(), answer.text(), why.text()));
        }
        if (blocks.get(0) instanceof Block.Bullets list && !gap) {
            return listed(part, levels, question, list.words().toList(), why.text());
        }
        return Optional.empty();
    }

    private static Optional<SelfTestItem> listed(
            Part part, Levels levels, Words question, List<Words> items, Words why) {
        List<Integer> strong = IntStream.range(0, items.size())
                .filter(index -> startsStrong(items.get(index)))
                .boxed()
                .toList();
        if (strong.isEmpty()) {
            return Optional.of(new SelfTestItem.Aloud(question, levels, part.at(), items, why));
        }
        List<Words> choices = items.stream().map(SelfTestReader::unmarked).toList();
        return strong.size() == 1 && items.size() >= 2
                ? Optional.of(new SelfTestItem.TickOne(question, levels, part.at(), choices, strong.get(0), why))
                : Optional.empty();
    }

    /** A choice as it is printed: the right one is not set apart. */
    private static Words unmarked(Words choice) {
        if (!startsStrong(choice)) {
            return choice;
        }
        List<Inline> runs = new ArrayList<>(((Inline.Strong) choice.runs().get(0)).inside());
        runs.addAll(choice.runs().subList(1, choice.runs().size()));
        return new Words(runs);
    }

    private static boolean startsStrong(Words words) {
        return !words.runs().isEmpty() && words.runs().get(0) instanceof Inline.Strong;
    }
}
