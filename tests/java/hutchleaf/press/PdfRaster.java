package hutchleaf.press;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page as it prints, to ask where there is ink: of text, lines and figures alike. */
public final class PdfRaster {
    private static final int DOTS_PER_INCH = 150;
    private static final double DOTS_PER_MM = DOTS_PER_INCH / 25.4;

    /** Darker than this is ink; paler is the soft edge of a line. */
    private static final int INK = 128;

    /** A line is looked for so far on either side of where it should be: mm. */
    private static final double NEAR = 0.8;

    private final BufferedImage image;

    private PdfRaster(BufferedImage image) {
        this.image = image;
    }

    /** A page, 1-based. */
    public static PdfRaster of(byte[] pdf, int page) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PdfRaster(new PDFRenderer(document).renderImageWithDPI(page - 1, DOTS_PER_INCH, ImageType.GRAY));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public double width() {
        return image.getWidth() / DOTS_PER_MM;
    }

    public double height() {
        return image.getHeight() / DOTS_PER_MM;
    }

    /** The share of dots with ink in a rectangle in mm from the top left corner, 0 to 1. */
    public double ink(double left, double top, double right, double bottom) {
        int x0 = (int) Math.max(0, Math.ceil(left * DOTS_PER_MM));
        int x1 = (int) Math.min(image.getWidth(), Math.floor(right * DOTS_PER_MM));
        int y0 = (int) Math.max(0, Math.ceil(top * DOTS_PER_MM));
        int y1 = (int) Math.min(image.getHeight(), Math.floor(bottom * DOTS_PER_MM));
        int dark = 0;
        for (int y = y0; y < y1; y++) {
            for (int x = x0; x < x1; x++) {
                if (image.getRaster().getSample(x, y, 0) < INK) {
                    dark++;
                }
            }
        }
        return dark / (double) Math.max(1, (x1 - x0) * (y1 - y0));
    }

    /**
     * A straight line near a place.
     *
     * @param at where its middle lies, in mm, weighed by how dark each dot is
     * @param drawn mm of ink across it, on average: less than its width where it is dashed
     */
    public record Line(double at, double drawn) {}

    /** The line that runs upright near a place. */
    public Line upright(double x, double top, double bottom) {
        return line(x, top, bottom, true);
    }

    /** The line that runs level near a place. */
    public Line level(double y, double left, double right) {
        return line(y, left, right, false);
    }

    private Line line(double near, double from, double to, boolean upright) {
        double dark = 0;
        double moment = 0;
        int first = (int) Math.round(from * DOTS_PER_MM);
        int last = (int) Math.round(to * DOTS_PER_MM);
        int most = (int) Math.round((near + NEAR) * DOTS_PER_MM);
        for (int across = (int) Math.round((near - NEAR) * DOTS_PER_MM); across < most; across++) {
            for (int along = first; along < last; along++) {
                int grey = upright
                        ? image.getRaster().getSample(across, along, 0)
                        : image.getRaster().getSample(along, across, 0);
                double ink = (255 - grey) / 255.0;
                dark += ink;
                moment += ink * (across + 0.5);
            }
        }
        return new Line(moment / Math.max(dark, 1e-9) / DOTS_PER_MM, dark / (last - first) / DOTS_PER_MM);
    }
}
