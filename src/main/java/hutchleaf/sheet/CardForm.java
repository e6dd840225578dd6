package hutchleaf.sheet;

/** A size and a way of making it. */
public record CardForm(CardFormat format, CardMaking making) {
    /** A size made the usual way. */
    public static CardForm usual(CardFormat format) {
        return new CardForm(format, CardMaking.USUAL);
    }

    /** The same size made in a way. */
    public CardForm made(CardMaking other) {
        return new CardForm(format, other);
    }

    /** Its sheet on a paper. */
    public CardSheet on(Paper paper) {
        return new CardSheet(paper, format, making);
    }
}
