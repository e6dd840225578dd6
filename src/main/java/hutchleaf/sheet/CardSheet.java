package hutchleaf.sheet;

/**
 * A sheet of fold-over cards, held sideways: fronts on the left half, backs on the right with their columns in mirror
 * order, an upright fold in the middle. Folded, each back lies behind its front, and one cut goes through both.
 *
 * @param columns columns of cards in a half
 * @param top where the first row starts
 */
public record CardSheet(Paper paper, Length cardWidth, Length cardHeight, int columns, int rows, Length top) {
    /** Nothing is printed closer than this to a cut: home cutting wanders by up to 3 mm in all (a die-line handbook). */
    public static final Length SAFE = Length.mm(3);

    private static final Length WIDTH = Length.mm(66);

    /** Six cards of 66 by 60 mm. */
    public static CardSheet standard(Paper paper) {
        return new CardSheet(paper, WIDTH, Length.mm(60), 2, 3, Length.mm(paper == Paper.LETTER ? 27.5 : 22));
    }

    /** Four cards of 66 by 90 mm, for large type and pictures. */
    public static CardSheet primary(Paper paper) {
        return new CardSheet(paper, WIDTH, Length.mm(90), 2, 2, Length.mm(paper == Paper.LETTER ? 26.4 : 22));
    }

    public int cards() {
        return columns * rows;
    }

    /** Sheets that so many cards take; the last may have empty places. */
    public int sheets(int deck) {
        return (deck + cards() - 1) / cards();
    }

    /** The upright fold, from the left edge. */
    public Length fold() {
        return paper.height().times(0.5);
    }

    /**
     * The front of a card.
     *
     * @param place 0 at the top left, row by row
     */
    public Box front(int place) {
        int row = place / columns;
        int columnsToFold = columns - place % columns;
        return new Box(
                fold().minus(cardWidth.times(columnsToFold)), top.plus(cardHeight.times(row)), cardWidth, cardHeight);
    }

    /** The back of the card at a place: where its front lands when the sheet is folded. */
    public Box back(int place) {
        return front(place).foldedOn(fold());
    }
}
