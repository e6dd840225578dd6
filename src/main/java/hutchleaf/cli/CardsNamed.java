package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.rabbit.OwnCards;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Finds cards by the codes that stand on them. */
final class CardsNamed {
    private final TreeMap<CardCode, Card> known = new TreeMap<>();
    private final Problems problems;

    CardsNamed(Library library, Problems problems) {
        library.topics().stream()
                .flatMap(topic -> topic.practice().cards().stream())
                .forEach(card -> known.put(card.code(), card));
        this.problems = problems;
    }

    /** The cards by code, each once; a code that is none is a problem. */
    List<Card> find(List<String> codes, Optional<Level> level) {
        TreeMap<CardCode, Card> found = new TreeMap<>();
        for (String typed : codes) {
            String code = typed.strip();
            Optional<Card> card = CardCode.parse(code).map(known::get);
            card.ifPresent(each -> found.put(each.code(), each));
            if (card.isEmpty()) {
                problems.add(Place.whole("--cards " + code), "there is no such card", mend(code));
            } else if (level.isPresent() && !card.get().levels().holds(level.get())) {
                problems.add(
                        Place.whole("--cards " + code),
                        level.get().word() + "'s deck does not hold it: the card is for "
                                + card.get().levels(),
                        "leave --level out");
            }
        }
        return List.copyOf(found.values());
    }

    private String mend(String typed) {
        Optional<CardCode> code = CardCode.parse(typed);
        if (code.isEmpty()) {
            return "write the code that stands on the card, for example "
                    + known.keySet().stream()
                            .findFirst()
                            .map(CardCode::toString)
                            .orElse("11.2");
        } else if (code.get().group() == OwnCards.GROUP) {
            return "cards on a member's own rabbit are printed by: hutchleaf packets --only NAME";
        }
        return sameGroup(code.get())
                .or(() -> NearMiss.of(
                        typed, known.keySet().stream().map(CardCode::toString).toList()))
                .map(near -> "did you mean " + near + "?")
                .orElse("look at the code that stands on the card");
    }

    private Optional<String> sameGroup(CardCode code) {
        return known.keySet().stream()
                .filter(each -> each.group() == code.group())
                .min(Comparator.comparingInt(each -> Math.abs(each.number() - code.number())))
                .map(CardCode::toString);
    }

    /**
     * The level whose deck the cards are printed as: the first above primary that holds all of them, since its cards are
     * smaller and take fewer sheets; else primary; else the oldest.
     */
    static Level levelOf(List<Card> cards) {
        List<Level> order = new ArrayList<>(List.of(Level.JUNIOR, Level.INTERMEDIATE, Level.SENIOR, Level.PRIMARY));
        return order.stream()
                .filter(level -> cards.stream().allMatch(card -> card.levels().holds(level)))
                .findFirst()
                .orElse(Level.SENIOR);
    }

    /** An edition without its problems, which reading the library has told already. */
    static Edition edition(Library library, Level level) {
        return Edition.of(library, level, new Problems());
    }
}
