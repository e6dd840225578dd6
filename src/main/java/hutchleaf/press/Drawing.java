package hutchleaf.press;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Component;
import java.awt.Graphics2D;
import org.jspecify.annotations.Nullable;

/**
 * A parsed drawing.
 *
 * @param width of its view box, in its own units
 * @param height of its view box, in its own units
 */
record Drawing(SVGDocument svg, double width, double height) {
    private static final @Nullable Component NO_WINDOW = null;

    static Drawing of(SVGDocument svg) {
        ViewBox box = svg.viewBox();
        return new Drawing(svg, box.getWidth(), box.getHeight());
    }

    /** Draws it as large as fits, centred, with its own proportions. */
    void draw(Graphics2D graphics, double boxWidth, double boxHeight) {
        svg.render(NO_WINDOW, graphics, new ViewBox((float) boxWidth, (float) boxHeight));
    }
}
