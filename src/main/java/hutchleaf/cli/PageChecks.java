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
import hutchleaf.press.SvgCheck;
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
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;

/** What only the pages can tell: signs the fonts lack, cards that do not fit in the smallest type, figures that do not print well. */
final class PageChecks {
    /** Whether the ink of every figure is measured too, which takes its time. */
    enum InkMeasured {
        YES,
        NO
    }

    /** The thinnest line that lives through a copy of a copy: 0.9 pt. */
    private static final double LEAST_INK = 0.9 * 25.4 / 72;

    /** So many of the widest letters fit on a face in the smallest type; a word of 15 letters takes about 45 of its 58 mm. */
    private static final int SURE_TEXT = 95;

    private static final Pattern LONG_WORD = Pattern.compile("\\S{16,}");

    /** Ends taper and fur is finer; more than so much of a drawing may not be. Own rule. */
    private static final double LEAST_SHARE = 0.5;

    private final Library library;
    private final List<Edition> editions;
    private final Publications publications;
    private final Figures figures;
    private final CompletableFuture<Problems> large;
    private final Map<Rule, Problems> found = new EnumMap<>(Rule.class);

    /** Begins to lay out the largest deck, beside whatever the caller does next. */
    PageChecks(Library library, List<Edition> editions, Publications publications, Figures figures) {
        this.library = library;
        this.editions = editions;
        this.publications = publications;
        this.figures = figures;
        this.large = CompletableFuture.supplyAsync(() -> fit(Level.SENIOR));
    }

    /** What was found, by rule; a card that holds an unprintable sign is not fitted. */
    Map<Rule, Problems> check(InkMeasured ink) {
        Press press = new Press(figures);
        Proof.lines(library).forEach(line -> press.checkGlyphs(line.text(), line.at(), of(Rule.PAGE_GLYPH)));
        editions.forEach(edition -> FigureUses.check(edition, of(Rule.FIGURE_NARROW)));
        for (Drawing drawing : library.tables().drawings().values()) {
            figures.svg(drawing.file()).ifPresent(svg -> SvgCheck.check(drawing.file(), svg, of(Rule.FIGURE_UNSAFE)));
            if (ink == InkMeasured.YES && drawing.smallest() > 0) {
                ink(drawing, press);
            }
        }
        Problems fit = fit(Level.PRIMARY);
        fit.addAll(large.join());
        if (!of(Rule.PAGE_GLYPH).hasErrors() && !of(Rule.FIGURE_UNSAFE).hasErrors()) {
            found.put(Rule.CARD_FIT, fit);
        }
        return found;
    }

    /** Lays out the cards of primary, or those of all levels above it, which have one size. */
    private Problems fit(Level level) {
        Problems fit = new Problems();
        editions.stream()
                .filter(edition -> edition.level() == level)
                .findFirst()
                .ifPresent(edition -> publications
                        .cards()
                        .some(edition, doubtful(level == Level.PRIMARY ? edition.deck() : larger(editions)), fit)
                        .ifPresent(deck -> new Press(figures).checkFit(deck, fit)));
        return fit;
    }

    private Problems of(Rule rule) {
        return found.computeIfAbsent(rule, key -> new Problems());
    }

    /** Cards that may not fit: a short text of short words without a picture fits on every card. */
    private static List<Card> doubtful(List<Card> cards) {
        return cards.stream()
                .filter(card -> card.picture().isPresent()
                        || isLong(card.question().plain())
                        || isLong(card.answer().plain()))
                .toList();
    }

    private static boolean isLong(String text) {
        return text.length() > SURE_TEXT || LONG_WORD.matcher(text).find();
    }

    private void ink(Drawing drawing, Press press) {
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

    /** Every card of the levels above primary once. */
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
