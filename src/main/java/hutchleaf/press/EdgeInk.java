package hutchleaf.press;

import hutchleaf.sheet.Length;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.OptionalInt;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Looks for ink along the edges of pages, where many printers leave the paper blank. */
final class EdgeInk {
    private static final int DOTS_AN_INCH = 100;
    private static final int POINTS_AN_INCH = 72;

    /** Darker than this is ink; paler is the soft edge of a line. */
    private static final int INK = 128;

    private EdgeInk() {}

    /** The first page, from 1, with a dot that lies wholly within the strip along its edges. */
    static OptionalInt firstPage(PDDocument pdf, Length edge) throws IOException {
        PDFRenderer renderer = new PDFRenderer(pdf);
        int strip = (int) Math.floor(edge.points() * DOTS_AN_INCH / POINTS_AN_INCH);
        for (int page = 0; page < pdf.getNumberOfPages(); page++) {
            // Drawing a page takes far longer than reading it, and most pages keep well away from their edges.
            if (!inside(pdf.getPage(page), edge)
                    && reaches(renderer.renderImageWithDPI(page, DOTS_AN_INCH, ImageType.GRAY), strip)) {
                return OptionalInt.of(page + 1);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean inside(PDPage page, Length edge) throws IOException {
        Rectangle2D ink = InkBounds.of(page);
        PDRectangle box = page.getCropBox();
        double points = edge.points();
        return ink.getWidth() < 0
                || new Rectangle2D.Double(
                                box.getLowerLeftX() + points,
                                box.getLowerLeftY() + points,
                                box.getWidth() - 2 * points,
                                box.getHeight() - 2 * points)
                        .contains(ink);
    }

    private static boolean reaches(BufferedImage page, int strip) {
        int width = page.getWidth();
        int height = page.getHeight();
        return ink(page, 0, 0, width, strip)
                || ink(page, 0, height - strip, width, height)
                || ink(page, 0, strip, strip, height - strip)
                || ink(page, width - strip, strip, width, height - strip);
    }

    private static boolean ink(BufferedImage page, int left, int top, int right, int bottom) {
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                if (page.getRaster().getSample(x, y, 0) < INK) {
                    return true;
                }
            }
        }
        return false;
    }
}
