package hutchleaf.press;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** A rectangle that holds all that a page draws, rather too large than too small: white and clipped shapes count too. */
final class InkBounds extends PDFGraphicsStreamEngine {
    /** Of an advance of nought, in sizes of the font. Letters reach less than a third of a millimetre beside theirs. */
    private static final Rectangle2D LETTER = new Rectangle2D.Double(0, -0.3, 0, 1.4);

    private final Rectangle2D bounds = new Rectangle2D.Double(0, 0, -1, -1);
    private final Path2D path = new Path2D.Double();

    private InkBounds(PDPage page) {
        super(page);
    }

    /** In points from the lower left corner; a width less than 0 where nothing is drawn. */
    static Rectangle2D of(PDPage page) throws IOException {
        InkBounds ink = new InkBounds(page);
        ink.processPage(page);
        return ink.bounds;
    }

    private void add(Rectangle2D box) {
        if (bounds.getWidth() < 0) {
            bounds.setRect(box);
        } else {
            bounds.add(box);
        }
    }

    private void addPath(double around) {
        if (path.getCurrentPoint() != null) {
            Rectangle2D box = path.getBounds2D();
            add(new Rectangle2D.Double(
                    box.getX() - around,
                    box.getY() - around,
                    box.getWidth() + 2 * around,
                    box.getHeight() + 2 * around));
        }
        path.reset();
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector advance) {
        Rectangle2D letter = new Rectangle2D.Double(
                LETTER.getX(), LETTER.getY(), LETTER.getWidth() + advance.getX(), LETTER.getHeight());
        add(matrix.createAffineTransform().createTransformedShape(letter).getBounds2D());
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void drawImage(PDImage image) {
        Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
        add(matrix.createAffineTransform()
                .createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1))
                .getBounds2D());
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint() == null ? new Point2D.Double() : path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        if (path.getCurrentPoint() != null) {
            path.closePath();
        }
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        addPath(transformWidth(getGraphicsState().getLineWidth()));
    }

    @Override
    public void fillPath(int windingRule) {
        addPath(0);
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void shadingFill(COSName name) {
        add(getGraphicsState().getCurrentClippingPath().getBounds2D());
    }
}
