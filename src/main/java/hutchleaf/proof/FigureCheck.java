package hutchleaf.proof;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.Drawing;
import hutchleaf.model.Drawing.Label;
import hutchleaf.model.LabelIt;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Topic;
import hutchleaf.problem.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Every figure is shown somewhere, says how narrow it may be printed, and points to its parts with words that are known. */
final class FigureCheck implements Check {
    /** Two parts closer than this, as a share of the figure's width, are one dot on paper. Own rule. */
    private static final double CLOSE = 0.015;

    @Override
    public void check(Material material, Findings findings) {
        Library library = material.library();
        Set<String> used = used(library);
        Map<String, Level> terms = TermCheck.youngest(material);
        Set<String> plain = new HashSet<>(library.wording().labels());
        plain.addAll(library.wording().everyday());
        for (Drawing drawing : library.tables().drawings().values()) {
            String shown = Drawing.isSmall(drawing.file()) ? Drawing.large(drawing.file()) : drawing.file();
            Place at = Place.whole(Roots.of(library) + drawing.file());
            if (!used.contains(shown)) {
                findings.error(Rule.FIGURE_UNUSED, at, "no page shows this figure", "use it, or take it out");
            }
            if (drawing.smallest() == 0) {
                findings.error(
                        Rule.FIGURE_WIDTH,
                        at,
                        "the figure does not say how narrow it may be printed",
                        "add data-min-width=\"40mm\" to <svg>");
            }
            places(drawing, findings);
            if (!Drawing.isSmall(drawing.file())) {
                drawing.labels().forEach(label -> word(label, terms, plain, findings));
            }
        }
        for (LabelIt row : library.tables().labelIt()) {
            if (!library.tables().drawings().containsKey(row.figure())) {
                findings.error(Rule.TREE, row.at(), "no figure '" + row.figure() + "'", "name one of figures/");
            }
        }
    }

    private static Set<String> used(Library library) {
        Set<String> used = new HashSet<>();
        library.topics().stream().flatMap(FigureCheck::pictures).forEach(picture -> used.add(picture.file()));
        library.tables().labelIt().forEach(row -> used.add(row.figure()));
        return used;
    }

    private static Stream<Block.Picture> pictures(Topic topic) {
        Stream<Block.Picture> inText = topic.sections().stream().flatMap(section -> section.pictures().stream());
        Stream<Block.Picture> onCards =
                topic.practice().cards().stream().map(Card::picture).flatMap(Optional::stream);
        return Stream.concat(inText, onCards);
    }

    private static void places(Drawing drawing, Findings findings) {
        List<Label> labels = drawing.labels(Level.SENIOR);
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            boolean inside =
                    label.x() >= 0 && label.y() >= 0 && label.x() <= drawing.width() && label.y() <= drawing.height();
            if (!inside) {
                findings.error(
                        Rule.FIGURE_LABEL_PLACE,
                        label.at(),
                        "'" + label.word() + "' points outside the figure",
                        "move its circle onto the part");
            }
            for (Label other : labels.subList(0, i)) {
                if (Math.hypot(label.x() - other.x(), label.y() - other.y()) < CLOSE * drawing.width()) {
                    findings.error(
                            Rule.FIGURE_LABEL_PLACE,
                            label.at(),
                            "'" + label.word() + "' and '" + other.word() + "' point to one spot",
                            "move one of them");
                }
            }
        }
    }

    private static void word(Label label, Map<String, Level> terms, Set<String> plain, Findings findings) {
        String word = label.word().toLowerCase(Locale.ROOT);
        Level explained = terms.get(word);
        boolean known = explained != null && explained.compareTo(label.from()) <= 0;
        if (!known && !plain.contains(word)) {
            findings.error(
                    Rule.FIGURE_LABEL,
                    label.at(),
                    "the label '" + label.word() + "' is no word to know for "
                            + label.from().word(),
                    "explain it at that level, or list it in words/labels.md");
        }
    }
}
