package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.model.Card;
import hutchleaf.model.Drawing;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.FigureUses;
import hutchleaf.page.Publications;
import hutchleaf.press.Figures;
import hutchleaf.press.Press;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.proof.Proof;
import hutchleaf.proof.Rule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What only the pages can tell: signs the fonts lack, cards that do not fit in the smallest type, figures that do not print well. */
final class PageChecks {
    /** Whether the ink of every figure is measured too, which takes its time. */
    enum InkMeasured {
        YES,
        NO
    }

    /** The thinnest line that lives through a copy of a copy: 0.9 pt. */
    private static final double LEAST_INK = 0.9 * 25.4 / 72;

    /** Ends taper and fur is finer; more than so much of a drawing may not be. Own rule. */
    private static final double LEAST_SHARE = 0.5;

    private final Publications publications;
    private final Press press;
    private final Map<Rule, Problems> found = new EnumMap<>(Rule.class);

    PageChecks(Publications publications, Figures figures) {
        this.publications = publications;
        this.press = new Press(figures);
    }

    /** What was found, by rule. */
    Map<Rule, Problems> check(Library library, List<Edition> editions, InkMeasured ink) {
        Proof.lines(library).forEach(line -> press.checkGlyphs(line.text(), line.at(), of(Rule.PAGE_GLYPH)));
        editions.forEach(edition -> FigureUses.check(edition, of(Rule.FIGURE_NARROW)));
        for (Drawing drawing : library.tables().drawings().values()) {
            press.checkFigure(drawing.file(), of(Rule.FIGURE_UNSAFE));
            if (ink == InkMeasured.YES && drawing.smallest() > 0) {
                ink(drawing);
            }
        }
        if (!of(Rule.PAGE_GLYPH).hasErrors() && !of(Rule.FIGURE_UNSAFE).hasErrors()) {
            editions.stream()
                    .filter(edition -> edition.level() == Level.PRIMARY)
                    .forEach(edition -> fit(edition, edition.deck()));
            editions.stream()
                    .filter(edition -> edition.level() == Level.SENIOR)
                    .forEach(edition -> fit(edition, larger(editions)));
        }
        return found;
    }

    private Problems of(Rule rule) {
        return found.computeIfAbsent(rule, key -> new Problems());
    }

    private void fit(Edition edition, List<Card> cards) {
        Problems fit = of(Rule.CARD_FIT);
        publications.cards(edition, cards, fit).ifPresent(deck -> press.checkFit(deck, fit));
    }

    private void ink(Drawing drawing) {
        press.inkOf(drawing.file(), drawing.smallest(), LEAST_INK).ifPresent(share -> {
            if (share < LEAST_SHARE) {
                of(Rule.FIGURE_INK)
                        .add(
                                Place.whole("content/" + drawing.file()),
                                String.format(
                                        Locale.ROOT,
                                        "only %.0f %% of its ink is 0.9 pt or thicker where it is %.0f mm wide",
                                        100 * share,
                                        drawing.smallest()),
                                "draw it with heavier lines, or raise its data-min-width");
            }
        });
    }

    /** Every card of the levels above primary once: their cards have one size. */
    private static List<Card> larger(List<Edition> editions) {
        List<Card> cards = new ArrayList<>();
        editions.stream()
                .filter(edition -> edition.level() != Level.PRIMARY)
                .forEach(edition -> cards.addAll(edition.deck()));
        return cards.stream()
                .distinct()
                .sorted(Comparator.comparing(Card::code))
                .toList();
    }
}
