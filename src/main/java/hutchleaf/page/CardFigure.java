package hutchleaf.page;

import hutchleaf.model.Block;
import hutchleaf.model.Drawing;
import hutchleaf.model.Level;
import java.util.List;
import java.util.Map;

/** How a picture stands on a card's question side, in millimetres. */
final class CardFigure {
    /** Broader figures than this stand above the words, the others beside them. */
    private static final double BROAD = 1.2;

    /** The room on a card. */
    record Room(double width, double height) {}

    private static final Room PRIMARY = new Room(52, 42);
    private static final Room ABOVE = new Room(52, 26.8);
    private static final Room BESIDE = new Room(28, 38);

    private CardFigure() {}

    static Room room(Level level, double ratio) {
        if (level == Level.PRIMARY) {
            return PRIMARY;
        }
        return ratio > BROAD ? ABOVE : BESIDE;
    }

    static DeckView.CardPicture of(Map<String, Drawing> drawings, Level level, Block.Picture picture) {
        Drawing large = drawings.getOrDefault(picture.file(), new Drawing(picture.file(), 1, 1, 0, List.of()));
        double ratio =
                drawings.getOrDefault(Drawing.small(picture.file()), large).ratio();
        Room room = room(level, ratio);
        Drawing drawing = FigureViews.fitting(drawings, picture.file(), room.width(), room.height())
                .orElse(large);
        double height = Math.min(room.height(), room.width() / drawing.ratio());
        return new DeckView.CardPicture(
                drawing.file(), picture.alt(), height * drawing.ratio(), height, room.equals(BESIDE));
    }
}
