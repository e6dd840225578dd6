package hutchleaf.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads back where the words of a PDF stand. */
public final class PdfWords {
    private static final double MM_PER_POINT = 25.4 / 72;

    private PdfWords() {}

    /**
     * One word.
     *
     * @param page 1-based
     * @param x left edge of its first glyph's advance, in mm from the left of the page
     * @param y its baseline, in mm from the top of the page
     * @param width of its advance, in mm
     * @param size of its font, in points
     */
    public record Word(String text, int page, double x, double y, double width, double size) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "'%s' p%d (%.2f, %.2f) mm, %.1f pt", text, page, x, y, size);
        }
    }

    /** Every word, in the order in which the file paints them. */
    public static List<Word> of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Stripper stripper = new Stripper();
            stripper.getText(document);
            return stripper.words;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words with this text. */
    public static List<Word> of(byte[] pdf, String text) {
        return of(pdf).stream().filter(word -> word.text().equals(text)).toList();
    }

    /** A page's text as a reader sees it, top to bottom. */
    public static String text(byte[] pdf, int page) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            stripper.setLineSeparator("\n");
            return stripper.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Stripper extends PDFTextStripper {
        private final List<Word> words = new ArrayList<>();

        @Override
        protected void writeString(String text, List<TextPosition> glyphs) {
            int from = 0;
            for (int i = 0; i <= glyphs.size(); i++) {
                if (i == glyphs.size() || glyphs.get(i).getUnicode().isBlank()) {
                    if (i > from) {
                        words.add(word(glyphs.subList(from, i)));
                    }
                    from = i + 1;
                }
            }
        }

        private Word word(List<TextPosition> glyphs) {
            TextPosition first = glyphs.get(0);
            TextPosition last = glyphs.get(glyphs.size() - 1);
            StringBuilder text = new StringBuilder();
            glyphs.forEach(glyph -> text.append(glyph.getUnicode()));
            double end = last.getXDirAdj() + last.getWidthDirAdj();
            return new Word(
                    text.toString(),
                    getCurrentPageNo(),
                    first.getXDirAdj() * MM_PER_POINT,
                    first.getYDirAdj() * MM_PER_POINT,
                    (end - first.getXDirAdj()) * MM_PER_POINT,
                    Math.round(first.getYScale() * 10) / 10.0);
        }
    }
}
