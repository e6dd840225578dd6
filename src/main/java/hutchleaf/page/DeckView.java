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
 */
record DeckView(
        Look look, double width, double height, Grid grid, int cards, int core, DeckPart part, List<SheetView> sheets) {
    /** The lines of the sheet: card size, fold, the left and top edge of the fronts. */
    record Grid(double cardWidth, double cardHeight, int columns, int rows, double fold, double left, double top) {}

    /** One sheet. */
    record SheetView(int no, List<CardView> cards) {}

    /** A card with the places of its two faces. */
    record CardView(
            String code,
            String topic,
            int toes,
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
