package hutchleaf.press;

import com.openhtmltopdf.layout.LayoutContext;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxReplacedElement;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Map;

/** A drawing in its box on the page, sized in the engine's dots. */
final class DrawnElement implements PdfBoxReplacedElement {
    /** Drawings of the same size in one document share one form. */
    record Stamp(Drawing drawing, int width, int height) {}

    private final Drawing drawing;
    private final Map<Stamp, Stamp> stamps;
    private final int dotsPerPixel;
    private final int width;
    private final int height;
    private Point location = new Point();

    /**
     * Takes the size that the style gives, keeping the drawing's proportions where it gives one side only; unsized, its
     * view box read as CSS pixels. The engine holds this against max-width and max-height (CSS 2.1, 10.4) afterwards.
     *
     * @param stamps those of the document; the engine tells them apart by identity
     * @param cssWidth in dots, less than zero for none
     * @param cssHeight in dots, less than zero for none
     */
    DrawnElement(Drawing drawing, Map<Stamp, Stamp> stamps, int dotsPerPixel, int cssWidth, int cssHeight) {
        this.drawing = drawing;
        this.stamps = stamps;
        this.dotsPerPixel = dotsPerPixel;
        double ratio = drawing.width() / drawing.height();
        double natural = cssHeight >= 0 ? cssHeight * ratio : drawing.width() * dotsPerPixel;
        double wide = cssWidth >= 0 ? cssWidth : natural;
        double high = cssHeight >= 0 ? cssHeight : wide / ratio;
        this.width = Math.max(1, (int) Math.round(wide));
        this.height = Math.max(1, (int) Math.round(high));
    }

    @Override
    public void paint(RenderingContext c, PdfBoxOutputDevice outputDevice, BlockBox box) {
        Rectangle area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), c);
        double wide = (double) area.width / dotsPerPixel;
        double high = (double) area.height / dotsPerPixel;
        // The engine cuts a form at whole pixels and measures from its foot: only a whole height lands right.
        outputDevice.drawWithGraphics(
                area.x,
                area.y,
                (float) Math.ceil(wide),
                (float) Math.ceil(high),
                stamps.computeIfAbsent(new Stamp(drawing, area.width, area.height), stamp -> stamp),
                graphics -> drawing.draw(graphics, wide, high));
    }

    @Override
    public int getIntrinsicWidth() {
        return width;
    }

    @Override
    public int getIntrinsicHeight() {
        return height;
    }

    @Override
    public Point getLocation() {
        return location;
    }

    @Override
    public void setLocation(int x, int y) {
        location = new Point(x, y);
    }

    @Override
    public void detach(LayoutContext c) {}

    @Override
    public boolean isRequiresInteractivePaint() {
        return false;
    }

    @Override
    public boolean hasBaseline() {
        return false;
    }

    @Override
    public int getBaseline() {
        return 0;
    }
}
