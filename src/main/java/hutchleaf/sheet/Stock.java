package hutchleaf.sheet;

/** The two kinds of paper that a club buys. */
public enum Stock {
    PLAIN,
    CARD;

    /**
     * The usual grammage where the paper is sold: plain 20 lb bond or 80 g/m², card 65 lb cover or 160 g/m². Common
     * practice, no source.
     */
    public Grammage grammage(Paper paper) {
        return switch (this) {
            case PLAIN -> paper == Paper.A4 ? new Grammage(80) : Grammage.ofPounds(20, BasicSize.BOND);
            case CARD -> paper == Paper.A4 ? new Grammage(160) : Grammage.ofPounds(65, BasicSize.COVER);
        };
    }
}
