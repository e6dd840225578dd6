package hutchleaf.sheet;

/**
 * A sheet of cards, held sideways: one grid in the middle of the page for every way of making. Where it is folded, half
 * of the columns are backs; where a printer turns it, all are fronts and the backs stand on the next page. Whichever
 * way, a back is its front mirrored on one line, so that both share one rectangle once it is folded or turned.
 */
public record CardSheet(Paper paper, CardFormat format, CardMaking making) {
    /** Nothing is printed closer than this to a cut: home cutting wanders by up to 3 mm in all (a die-line handbook). */
    public static final Length SAFE = Length.mm(3);

    /** Many printers leave the edge blank: up to 6.7 mm at the foot by the data sheet of one for the home. */
    public static final Length EDGE = Length.mm(7);

    /** Six cards of 66 by 60 mm, made the usual way. */
    public static CardSheet standard(Paper paper) {
        return new CardSheet(paper, CardFormat.STANDARD, CardMaking.USUAL);
    }

    /** Four cards of 66 by 90 mm, made the usual way. */
    public static CardSheet primary(Paper paper) {
        return new CardSheet(paper, CardFormat.PRIMARY, CardMaking.USUAL);
    }

    public Length cardWidth() {
        return format.width();
    }

    public Length cardHeight() {
        return format.height();
    }

    /** Columns of fronts. */
    public int columns() {
        return making.way().twoSided() ? 2 * inAHalf() : inAHalf();
    }

    public int rows() {
        return paper.width().minus(head()).minus(EDGE).holds(cardHeight());
    }

    /** Room above the cards for the signs. */
    private Length head() {
        return switch (paper) {
            case A4 -> Length.mm(22);
            case LETTER -> Length.mm(format == CardFormat.STANDARD ? 27.5 : 26.4);
        };
    }

    private int inAHalf() {
        return middle().minus(EDGE).holds(cardWidth());
    }

    /** Where the first row starts: the cards in the middle, or under the signs. */
    public Length top() {
        Length tall = cardHeight().times(rows());
        Length middle = paper.width().minus(tall).times(0.5);
        return middle.compareTo(head()) > 0 ? middle : head();
    }

    /** Where the first column starts. */
    public Length left() {
        return middle().minus(cardWidth().times(inAHalf()));
    }

    /** The whole grid, backs of a folded sheet included: where the outermost cuts run. */
    public Box grid() {
        return new Box(
                left(), top(), cardWidth().times(2.0 * inAHalf()), cardHeight().times(rows()));
    }

    public int cards() {
        return columns() * rows();
    }

    /** Sheets that so many cards take; the last may have empty places. */
    public int sheets(int deck) {
        return PaperCount.cards(deck, cards());
    }

    /** The upright line in the middle, from the left edge. */
    public Length middle() {
        return paper.height().times(0.5);
    }

    /**
     * The front of a card.
     *
     * @param place 0 at the top left, row by row
     */
    public Box front(int place) {
        int row = place / columns();
        int column = place % columns();
        Length left = switch (making.way()) {
            case FOLD_SHEET -> middle().minus(cardWidth().times(inAHalf() - column));
            case FOLD_CARD -> left().plus(cardWidth().times(2.0 * column));
            case LONG_EDGE, SHORT_EDGE -> left().plus(cardWidth().times(column));
        };
        return new Box(left, top().plus(cardHeight().times(row)), cardWidth(), cardHeight());
    }

    /** The back of the card at a place: where its front lands when the sheet is folded or turned. */
    public Box back(int place) {
        return behind(front(place), front(place).right());
    }

    /** Any box of the page as it is seen from the other side; for a folded card, on the fold of its own. */
    private Box behind(Box box, Length ownFold) {
        return switch (making.way()) {
            case FOLD_CARD -> box.foldedOn(ownFold);
            case FOLD_SHEET, SHORT_EDGE -> box.foldedOn(middle());
            case LONG_EDGE -> box.foldedOnLevel(paper.width().times(0.5));
        };
    }

    /** The grid on the page of the backs; the same page where there is none. */
    public Box backGrid() {
        return making.way().twoSided() ? behind(grid(), middle()) : grid();
    }
}
