package hutchleaf.edition;

import hutchleaf.model.Card;
import hutchleaf.rabbit.Findings;
import java.util.List;

/** A rabbit as its member studies it: what is to be found on it, and the cards on it. */
public record OwnRabbit(Findings findings, List<Card> cards) {
    public OwnRabbit {
        cards = List.copyOf(cards);
    }
}
