package hutchleaf.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** The faces that a finished PDF is set in. */
public final class PdfFonts {
    private PdfFonts() {}

    /** Their names, without the six letters that stand before that of a subset (ISO 32000-1, 9.6.4). */
    public static Set<String> of(byte[] pdf) {
        Set<String> names = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    names.add(page.getResources().getFont(name).getName().replaceFirst("^[A-Z]{6}\\+", ""));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return names;
    }
}
