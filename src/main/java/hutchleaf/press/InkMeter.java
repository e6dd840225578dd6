package hutchleaf.press;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * Measures how much of each page is printed black. What is drawn is looked at on a grey rendering of 240 dots an inch;
 * letters are not rendered, since most of the time would go there: the area of each glyph is worked out once and added
 * up. White letters stand on black, and take away from it. Safe between threads.
 */
public final class InkMeter {
    /** A glyph of a typeface, whatever file it stands in: a subset keeps the numbers of the whole font. */
    private record Glyph(String font, int code) {}

    /** A line of 0.9 pt is 3 dots, wherever it lies. */
    private static final float SCALE = 240f / 72;

    /** A line that is painted twice is as black as one that is painted once, which soft edges would not give. */
    private static final RenderingHints SHARP =
            new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);

    /** A glyph's outline is in thousandths of its size. */
    private static final double UNITS = 1000;

    /** How far a straight piece may leave a curve of a glyph, in the same units. */
    private static final double FLATNESS = 1;

    /** Paler than this is white, on black. */
    private static final double WHITE = 0.25;

    /** Six letters before the name of a font that is embedded in part (ISO 32000-1, 9.6.4). */
    private static final Pattern SUBSET = Pattern.compile("^[A-Z]{6}\\+");

    private final Map<Glyph, Double> areas = new ConcurrentHashMap<>();

    /** The share of each page that is black, 0 to 1, in order; a part that many files share is measured once. */
    public List<Double> of(Printed printed) {
        return printed.ink(this::measured);
    }

    private List<Double> measured(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(new RandomAccessReadBuffer(pdf))) {
            List<Double> shares = new ArrayList<>();
            Renderer renderer = new Renderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                Backdrop.dropMarks(document.getPage(page).getCOSObject());
                shares.add(renderer.share(page, document.getPage(page).getCropBox()));
            }
            return shares;
        } catch (IOException e) {
            throw new UncheckedIOException("could not measure the ink", e);
        }
    }

    private final class Renderer extends PDFRenderer {
        /** Of the letters on the page at hand, in square points. */
        private double letters;

        Renderer(PDDocument document) {
            super(document);
            setRenderingHints(SHARP);
        }

        double share(int page, PDRectangle box) throws IOException {
            int width = Math.max(1, Math.round(box.getWidth() * SCALE));
            int height = Math.max(1, Math.round(box.getHeight() * SCALE));
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
            Graphics2D graphics = image.createGraphics();
            graphics.setBackground(Color.WHITE);
            graphics.clearRect(0, 0, width, height);
            letters = 0;
            renderPageToGraphics(page, graphics, SCALE);
            graphics.dispose();
            double share = drawn(image) + letters / (box.getWidth() * box.getHeight());
            return Math.min(1, Math.max(0, share));
        }

        private static double drawn(BufferedImage image) {
            byte[] dots = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
            long ink = 0;
            for (byte dot : dots) {
                ink += 255 - (dot & 0xff);
            }
            return ink / 255.0 / dots.length;
        }

        @Override
        protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
            return new PageDrawer(parameters) {
                @Override
                protected void showFontGlyph(Matrix place, PDFont font, int code, Vector advance) throws IOException {
                    double size =
                            Math.abs(place.getScaleX() * place.getScaleY() - place.getShearX() * place.getShearY());
                    letters += size * area(font, code) * weight();
                }

                private double weight() throws IOException {
                    double ink = ink(getGraphicsState().getNonStrokingColor());
                    return ink < WHITE ? ink - 1 : ink;
                }
            };
        }
    }

    private static double ink(PDColor colour) throws IOException {
        Color seen = new Color(colour.toRGB());
        return 1 - (0.30 * seen.getRed() + 0.59 * seen.getGreen() + 0.11 * seen.getBlue()) / 255;
    }

    private double area(PDFont font, int code) throws IOException {
        Glyph glyph = new Glyph(SUBSET.matcher(font.getName()).replaceFirst(""), code);
        Double known = areas.get(glyph);
        if (known == null) {
            known = font instanceof PDVectorFont drawn ? area(drawn.getNormalizedPath(code)) : 0;
            areas.put(glyph, known);
        }
        return known;
    }

    /**
     * How much a glyph of size 1 covers: outer and inner contours run opposite ways, so that their signed areas add up
     * (TrueType).
     */
    private static double area(GeneralPath path) {
        double twice = 0;
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator pieces = path.getPathIterator(null, FLATNESS); !pieces.isDone(); pieces.next()) {
            int kind = pieces.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO) {
                startX = at[0];
                startY = at[1];
            } else {
                if (kind == PathIterator.SEG_CLOSE) {
                    at[0] = startX;
                    at[1] = startY;
                }
                twice += x * at[1] - at[0] * y;
            }
            x = at[0];
            y = at[1];
        }
        return Math.abs(twice) / 2 / (UNITS * UNITS);
    }
}
