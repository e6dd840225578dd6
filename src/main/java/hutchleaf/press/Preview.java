package hutchleaf.press;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Pictures of a finished document to look at before it is printed: contact sheets in grey, twelve pages each with their
 * numbers below, 40 dots an inch. The same document gives the same bytes on the same machine.
 */
public final class Preview {
    /** Told of each contact sheet, one at a time, so that memory holds no more. */
    public interface Sheets {
        /**
         * A finished sheet.
         *
         * @param no 1 for the first
         */
        void sheet(int no, byte[] png);
    }

    private static final int ACROSS = 4;
    private static final int DOWN = 3;

    /** Pages on a sheet. */
    public static final int A_SHEET = ACROSS * DOWN;

    private static final float SCALE = 40f / 72;

    /** Pages are drawn so many times larger and averaged: lines are drawn without grey, and would fall between dots. */
    private static final int FINER = 3;

    private static final int GAP = 12;
    private static final int CAPTION = 22;
    private static final float CAPTION_SIZE = 15;
    private static final Color DESK = new Color(0xd0d0d0);

    private final PDDocument document;
    private final PDFRenderer renderer;
    private final TrueTypeFont font;
    private final int cellWidth;
    private final int cellHeight;

    private Preview(PDDocument document) {
        this.document = document;
        this.renderer = new PDFRenderer(document);
        this.font = Typefaces.numerals();
        int widest = 0;
        int highest = 0;
        for (int page = 0; page < document.getNumberOfPages(); page++) {
            widest = Math.max(widest, dots(box(page).getWidth()));
            highest = Math.max(highest, dots(box(page).getHeight()));
        }
        this.cellWidth = widest + GAP;
        this.cellHeight = highest + CAPTION + GAP;
    }

    /** Sheets that so many pages take. */
    public static int sheets(int pages) {
        return (pages + A_SHEET - 1) / A_SHEET;
    }

    /** Makes all contact sheets of a document, in order. */
    public static void of(Printed printed, Sheets sheets) {
        try (InputStream in = printed.open();
                PDDocument document = Loader.loadPDF(new RandomAccessReadBuffer(in))) {
            Preview preview = new Preview(document);
            for (int no = 1; no <= sheets(document.getNumberOfPages()); no++) {
                sheets.sheet(no, preview.png((no - 1) * A_SHEET));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not draw a preview", e);
        }
    }

    private byte[] png(int first) throws IOException {
        int shown = Math.min(A_SHEET, document.getNumberOfPages() - first);
        int across = Math.min(ACROSS, shown);
        int down = (shown + ACROSS - 1) / ACROSS;
        BufferedImage sheet =
                new BufferedImage(across * cellWidth + GAP, down * cellHeight + GAP, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = sheet.createGraphics();
        graphics.setColor(DESK);
        graphics.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
        for (int place = 0; place < shown; place++) {
            int x = GAP + place % ACROSS * cellWidth;
            int y = GAP + place / ACROSS * cellHeight;
            page(graphics, first + place, x, y);
        }
        graphics.dispose();
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(sheet, "png", png);
        return png.toByteArray();
    }

    private void page(Graphics2D sheet, int page, int x, int y) throws IOException {
        int width = dots(box(page).getWidth());
        int height = dots(box(page).getHeight());
        sheet.drawImage(averaged(drawn(page, width * FINER, height * FINER)), x, y, null);
        number(sheet, page + 1, x + width / 2.0, y + height + CAPTION - 5);
    }

    private BufferedImage drawn(int page, int width, int height) throws IOException {
        BufferedImage fine = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = fine.createGraphics();
        graphics.setBackground(Color.WHITE);
        graphics.clearRect(0, 0, width, height);
        renderer.renderPageToGraphics(page, graphics, SCALE * FINER);
        graphics.dispose();
        return fine;
    }

    private static BufferedImage averaged(BufferedImage fine) {
        BufferedImage page =
                new BufferedImage(fine.getWidth() / FINER, fine.getHeight() / FINER, BufferedImage.TYPE_BYTE_GRAY);
        byte[] from = ((DataBufferByte) fine.getRaster().getDataBuffer()).getData();
        byte[] to = ((DataBufferByte) page.getRaster().getDataBuffer()).getData();
        for (int dot = 0; dot < to.length; dot++) {
            int left = dot % page.getWidth() * FINER;
            int top = dot / page.getWidth() * FINER;
            int sum = 0;
            for (int y = top; y < top + FINER; y++) {
                for (int x = left; x < left + FINER; x++) {
                    sum += from[y * fine.getWidth() + x] & 0xff;
                }
            }
            to[dot] = (byte) (sum / (FINER * FINER));
        }
        return page;
    }

    /** A page's number as outlines: the machine's own fonts differ, and may be missing. */
    private void number(Graphics2D sheet, int number, double middle, double baseline) throws IOException {
        double scale = CAPTION_SIZE / font.getUnitsPerEm();
        int[] glyphs = Integer.toString(number).chars().map(Preview.this::glyph).toArray();
        double width = 0;
        for (int glyph : glyphs) {
            width += font.getAdvanceWidth(glyph) * scale;
        }
        Graphics2D graphics = (Graphics2D) sheet.create();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(Color.BLACK);
        double x = middle - width / 2;
        for (int glyph : glyphs) {
            AffineTransform place = new AffineTransform(scale, 0, 0, -scale, x, baseline);
            graphics.fill(
                    place.createTransformedShape(font.getGlyph().getGlyph(glyph).getPath()));
            x += font.getAdvanceWidth(glyph) * scale;
        }
        graphics.dispose();
    }

    private int glyph(int digit) {
        try {
            return font.getUnicodeCmapLookup().getGlyphId(digit);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private PDRectangle box(int page) {
        return document.getPage(page).getCropBox();
    }

    private static int dots(float points) {
        return Math.round(points * SCALE);
    }
}
