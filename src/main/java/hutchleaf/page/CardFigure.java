package hutchleaf.page;

import hutchleaf.model.Block;
import hutchleaf.model.Drawing;
import java.util.List;
import java.util.Map;

/** How a picture stands on a card's question side, in millimetres. */
final class CardFigure {
    /** The room on a card. */
    record Room(double width, double height) {}

    private CardFigure() {}

    /** The room a picture has on a face. */
    static Room room(Map<String, Drawing> drawings, CardFace face, String file) {
        return face.room(ratio(drawings, file));
    }

    private static double ratio(Map<String, Drawing> drawings, String file) {
        Drawing large = large(drawings, file);
        return drawings.getOrDefault(Drawing.small(file), large).ratio();
    }

    private static Drawing large(Map<String, Drawing> drawings, String file) {
        return drawings.getOrDefault(file, new Drawing(file, 1, 1, 0, List.of()));
    }

    static DeckView.CardPicture of(Map<String, Drawing> drawings, CardFace face, Block.Picture picture) {
        double ratio = ratio(drawings, picture.file());
        Room room = face.room(ratio);
        Drawing drawing = FigureViews.fitting(drawings, picture.file(), room.width(), room.height())
                .orElseGet(() -> large(drawings, picture.file()));
        double height = Math.min(room.height(), room.width() / drawing.ratio());
        return new DeckView.CardPicture(
                drawing.file(), picture.alt(), height * drawing.ratio(), height, face.beside(ratio));
    }
}
