package hutchleaf.press;

import com.openhtmltopdf.layout.LayoutContext;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxReplacedElement;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Point;
import java.awt.Rectangle;

/** A drawing in its box on the page. Its natural size, in the engine's dots, is its view box read as CSS pixels. */
final class DrawnElement implements PdfBoxReplacedElement {
    /** Drawings of the same size in one document share one form. */
    private record Stamp(Drawing drawing, int width, int height) {}

    private final Drawing drawing;
    private final int dotsPerPixel;
    private Point location = new Point();

    DrawnElement(Drawing drawing, int dotsPerPixel) {
        this.drawing = drawing;
        this.dotsPerPixel = dotsPerPixel;
    }

    @Override
    public void paint(RenderingContext c, PdfBoxOutputDevice outputDevice, BlockBox box) {
        Rectangle area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), c);
        double width = (double) area.width / dotsPerPixel;
        double height = (double) area.height / dotsPerPixel;
        // The engine cuts a form at whole pixels and measures from its foot: only a whole height lands right.
        outputDevice.drawWithGraphics(
                area.x,
                area.y,
                (float) Math.ceil(width),
                (float) Math.ceil(height),
                new Stamp(drawing, area.width, area.height),
                graphics -> drawing.draw(graphics, width, height));
    }

    @Override
    public int getIntrinsicWidth() {
        return Math.max(1, (int) Math.round(drawing.width() * dotsPerPixel));
    }

    @Override
    public int getIntrinsicHeight() {
        return Math.max(1, (int) Math.round(drawing.height() * dotsPerPixel));
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
