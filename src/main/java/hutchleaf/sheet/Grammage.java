package hutchleaf.sheet;

/** What a paper weighs: grams a square metre (ISO 536, from memory). */
public record Grammage(double gsm) {
    /** International pound, exact. */
    public static final double GRAMS_A_POUND = 453.59237;

    /** A paper by its basis weight: pounds for 500 sheets of its basic size. */
    public static Grammage ofPounds(double pounds, BasicSize size) {
        return new Grammage(pounds * GRAMS_A_POUND / (PaperCount.REAM * size.squareMetres()));
    }

    /** Grams of so many sheets. */
    public double grams(Paper paper, int sheets) {
        return gsm * paper.width().mm() * paper.height().mm() / 1e6 * sheets;
    }
}
