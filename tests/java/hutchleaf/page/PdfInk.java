package hutchleaf.page;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Reads back the filled shapes of a PDF's page, in millimetres from its top left corner. */
final class PdfInk extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final double SAME = 0.05;

    /** Thicker than any line and thinner than any box: mm. */
    private static final double LINE = 1;

    /** A filled shape's bounds. */
    record Shape(double x, double y, double w, double h, int rgb) {
        boolean flat() {
            return h < LINE && w > LINE;
        }

        boolean upright() {
            return w < LINE && h > LINE;
        }

        /** The same, within the rounding of the engine. */
        boolean about(Shape other) {
            return near(x, other.x) && near(y, other.y) && near(w, other.w) && near(h, other.h);
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "x %.2f y %.2f, %.2f by %.2f mm, #%06x", x, y, w, h, rgb);
        }
    }

    private final List<Shape> shapes = new ArrayList<>();
    private final Path2D path = new Path2D.Double();
    private final double height;

    private PdfInk(PDPage page) {
        super(page);
        height = page.getMediaBox().getHeight();
    }

    static List<Shape> shapes(byte[] pdf, int page) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PdfInk ink = new PdfInk(document.getPage(page - 1));
            ink.processPage(document.getPage(page - 1));
            return ink.shapes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rectangles that are drawn by four sides, outer bounds. */
    static List<Shape> boxes(List<Shape> shapes) {
        List<Shape> flat = shapes.stream().filter(Shape::flat).distinct().toList();
        List<Shape> upright = shapes.stream().filter(Shape::upright).distinct().toList();
        List<Shape> boxes = new ArrayList<>();
        for (Shape left : upright) {
            for (Shape top : flat) {
                boolean corner = near(left.x(), top.x()) && near(left.y(), top.y());
                boolean closed = corner
                        && upright.stream()
                                .anyMatch(right -> near(right.x() + right.w(), top.x() + top.w())
                                        && near(right.y(), left.y())
                                        && near(right.h(), left.h()));
                Shape box = new Shape(left.x(), top.y(), top.w(), left.h(), top.rgb());
                if (closed && boxes.stream().noneMatch(box::about)) {
                    boxes.add(box);
                }
            }
        }
        return boxes;
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < SAME;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
        List.of(p1, p2, p3).forEach(point -> path.lineTo(point.getX(), point.getY()));
        path.closePath();
    }

    @Override
    public void drawImage(PDImage image) {}

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
        path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        path.reset();
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
        Rectangle2D bounds = path.getBounds2D();
        shapes.add(new Shape(
                bounds.getX() * MM_PER_POINT,
                (height - bounds.getMaxY()) * MM_PER_POINT,
                bounds.getWidth() * MM_PER_POINT,
                bounds.getHeight() * MM_PER_POINT,
                getGraphicsState().getNonStrokingColor().toRGB()));
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
        fillPath(windingRule);
    }

    @Override
    public void shadingFill(COSName name) {}
}
