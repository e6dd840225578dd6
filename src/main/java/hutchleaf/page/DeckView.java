package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What the template of a deck sees. Millimetres throughout.
 *
 * @param width of the page held sideways
 * @param cards how many there are in all
 * @param core how many of them to learn first
 * @param part what the sheets are a part of
 * @param form how the cards are made
 * @param face where things stand on a card
 */
record DeckView(
        Look look,
        double width,
        double height,
        Grid grid,
        int cards,
        int core,
        DeckPart part,
        Form form,
        CardFace face,
        List<SheetView> sheets) {
    /**
     * The lines of the sheet.
     *
     * @param columns of fronts
     * @param fold the upright line in the middle
     * @param left edge of the fronts
     * @param top edge of the fronts
     * @param backTop the top edge on a page of backs
     */
    record Grid(
            double cardWidth,
            double cardHeight,
            int columns,
            int rows,
            double fold,
            double left,
            double top,
            double backTop) {}

    /**
     * How the cards are made.
     *
     * @param usual whether the whole sheet is folded and a card turns like a page
     * @param way {@code fold-sheet}, {@code fold-card}, {@code long-edge} or {@code short-edge}
     * @param up whether a card flips up to its answer, not over like a page
     * @param turned whether backs are printed upside down
     * @param twoSided whether backs have a page of their own
     * @param large whether all type on the sheet is 18 pt or more
     * @param levelTurn whether the printer turns the page top to bottom as it is read
     */
    record Form(
            String format,
            boolean usual,
            String way,
            boolean up,
            boolean turned,
            boolean twoSided,
            boolean large,
            boolean levelTurn) {}

    /** One sheet. */
    record SheetView(int no, List<CardView> cards) {}

    /**
     * A card with the places of its two faces.
     *
     * @param level the youngest that has it, as its front says, which has room for one word
     * @param levels all that have it, as its back says
     */
    record CardView(
            String code,
            String topic,
            int toes,
            String level,
            String levels,
            boolean core,
            Xml question,
            Optional<CardPicture> picture,
            Xml answer,
            String place,
            At front,
            At back) {}

    /**
     * A picture on the question side.
     *
     * @param beside whether the words stand at its right, not under it
     */
    record CardPicture(String file, String alt, double width, double height, boolean beside) {}

    /** The top left corner of a face. */
    record At(double x, double y) {}
}
