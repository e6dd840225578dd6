package hutchleaf.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads back where words stand and which way up they are, straight from the text matrix (ISO 32000-1, 9.4.4). */
public final class PdfGlyphs {
    private static final double MM_PER_POINT = 25.4 / 72;

    private PdfGlyphs() {}

    /**
     * One word.
     *
     * @param page 1-based
     * @param x origin of its first glyph, in mm from the left of the page
     * @param y the same from the top
     * @param right 1 where it runs to the right, -1 where it is upside down
     * @param size of its font, in points
     */
    public record Run(String text, int page, double x, double y, double right, double size) {
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT, "'%s' p%d (%.2f, %.2f) mm, runs %+.0f, %.1f pt", text, page, x, y, right, size);
        }
    }

    /** Every word, in the order in which the file paints them. */
    public static List<Run> of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Stripper stripper = new Stripper();
            stripper.getText(document);
            return stripper.runs;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Takes glyphs as they are painted: sorting them into lines takes words that stand upside down apart. */
    private static final class Stripper extends PDFTextStripper {
        private static final double GAP = 0.2;

        private final List<Run> runs = new ArrayList<>();
        private final List<TextPosition> word = new ArrayList<>();

        @Override
        protected void processTextPosition(TextPosition glyph) {
            if (glyph.getUnicode().isBlank()) {
                end();
            } else {
                if (!word.isEmpty() && !follows(word.get(word.size() - 1), glyph)) {
                    end();
                }
                word.add(glyph);
            }
        }

        @Override
        protected void endPage(PDPage page) throws IOException {
            end();
            super.endPage(page);
        }

        private static boolean follows(TextPosition last, TextPosition next) {
            var from = last.getTextMatrix();
            var to = next.getTextMatrix();
            double size = Math.hypot(from.getScaleX(), from.getShearY());
            double end = from.getTranslateX() + Math.signum(from.getScaleX()) * last.getWidthDirAdj();
            return Math.signum(from.getScaleX()) == Math.signum(to.getScaleX())
                    && Math.abs(from.getTranslateY() - to.getTranslateY()) < GAP * size
                    && Math.abs(end - to.getTranslateX()) < GAP * size;
        }

        private void end() {
            if (word.isEmpty()) {
                return;
            }
            StringBuilder text = new StringBuilder();
            word.forEach(glyph -> text.append(glyph.getUnicode()));
            var matrix = word.get(0).getTextMatrix();
            double size = Math.hypot(matrix.getScaleX(), matrix.getShearY());
            runs.add(new Run(
                    text.toString(),
                    getCurrentPageNo(),
                    matrix.getTranslateX() * MM_PER_POINT,
                    (getCurrentPage().getMediaBox().getHeight() - matrix.getTranslateY()) * MM_PER_POINT,
                    matrix.getScaleX() / size,
                    size));
            word.clear();
        }
    }
}
