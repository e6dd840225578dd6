package hutchleaf.proof;

import hutchleaf.edition.Edition;
import hutchleaf.model.Card;

/** A level learns 30 to 60 core cards first: fewer leave gaps, more are no core. Own rule. */
final class CoreCheck implements Check {
    private static final int FEWEST = 30;
    private static final int MOST = 60;

    @Override
    public void check(Material material, Findings findings) {
        for (Edition edition : material.editions()) {
            long core = edition.deck().stream()
                    .filter(card -> card.need() == Card.Need.CORE)
                    .count();
            if (core < FEWEST || core > MOST) {
                findings.error(
                        Rule.CARD_CORE,
                        Roots.place(material.library()),
                        edition.level(),
                        "the " + Findings.LEVELS + " deck has " + core + " core cards",
                        "mark " + FEWEST + " to " + MOST + " of them core");
            }
        }
    }
}
