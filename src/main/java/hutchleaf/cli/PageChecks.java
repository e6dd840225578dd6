package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.Publications;
import hutchleaf.press.Figures;
import hutchleaf.press.Press;
import hutchleaf.problem.Problems;
import hutchleaf.proof.Proof;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What only the pages can tell: signs the fonts lack, and cards that do not fit even in the smallest type. */
final class PageChecks {
    /** What was found. */
    record Found(Problems glyphs, Problems fit) {}

    private final Publications publications;
    private final Press press;

    PageChecks(Publications publications, Figures figures) {
        this.publications = publications;
        this.press = new Press(figures);
    }

    Found check(Library library, List<Edition> editions) {
        Problems glyphs = new Problems();
        Proof.lines(library).forEach(line -> press.checkGlyphs(line.text(), line.at(), glyphs));
        Problems fit = new Problems();
        if (!glyphs.hasErrors()) {
            editions.stream()
                    .filter(edition -> edition.level() == Level.PRIMARY)
                    .forEach(edition -> fit(edition, edition.deck(), fit));
            editions.stream()
                    .filter(edition -> edition.level() == Level.SENIOR)
                    .forEach(edition -> fit(edition, larger(editions), fit));
        }
        return new Found(glyphs, fit);
    }

    private void fit(Edition edition, List<Card> cards, Problems fit) {
        publications.cards(edition, cards, fit).ifPresent(deck -> press.checkFit(deck, fit));
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
