package hutchleaf.proof;

import hutchleaf.model.Card;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds two cards of one deck that are nearly the same. */
final class TwinCheck implements Check {
    /** Own rule: twice the words two cards share, over all words of both (the coefficient of Dice, Ecology 26, 1945). */
    private static final double NEARLY_THE_SAME = 0.8;

    /** Fewer words than this say too little to compare. */
    private static final int FEWEST = 3;

    private record Read(Card card, Set<String> words) {}

    @Override
    public void check(Material material, Findings findings) {
        List<Read> read = new ArrayList<>();
        material.library().topics().stream()
                .flatMap(topic -> topic.practice().cards().stream())
                .forEach(card -> read.add(new Read(card, words(card))));
        for (int i = 0; i < read.size(); i++) {
            for (int j = i + 1; j < read.size(); j++) {
                compare(read.get(i), read.get(j), findings);
            }
        }
    }

    private static Set<String> words(Card card) {
        Set<String> words = new HashSet<>(PlainWords.of(card.question().plain()));
        words.addAll(PlainWords.of(card.answer().plain()));
        return words;
    }

    private static void compare(Read one, Read other, Findings findings) {
        int all = one.words().size() + other.words().size();
        int most = 2 * Math.min(one.words().size(), other.words().size());
        if (Math.min(one.words().size(), other.words().size()) < FEWEST
                || most < NEARLY_THE_SAME * all
                || !one.card().levels().overlaps(other.card().levels())) {
            return;
        }
        long shared = one.words().stream().filter(other.words()::contains).count();
        if (2 * shared >= NEARLY_THE_SAME * all) {
            findings.error(
                    Rule.CARD_TWIN,
                    other.card().at(),
                    "card " + other.card().code() + " is nearly card "
                            + one.card().code() + " at " + one.card().at(),
                    "keep one of them");
        }
    }
}
