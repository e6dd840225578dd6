package hutchleaf.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** Turns the content of figures without a name into artifacts, which readers aloud pass over (ISO 14289-1, 7.1). */
final class Decoration {
    private final PDDocument pdf;

    private Decoration(PDDocument pdf) {
        this.pdf = pdf;
    }

    /**
     * Rewrites the pages that hold such figures.
     *
     * @param figures tags already taken out of the tag tree
     */
    static void mark(PDDocument pdf, List<COSDictionary> figures) throws IOException {
        Map<COSDictionary, List<Integer>> numbers = new LinkedHashMap<>();
        for (COSDictionary figure : figures) {
            COSDictionary page = figure.getCOSDictionary(COSName.PG);
            for (COSBase kid : TagMend.kids(figure)) {
                if (kid instanceof COSNumber number && page != null) {
                    numbers.computeIfAbsent(page, key -> new ArrayList<>()).add(number.intValue());
                }
            }
        }
        Decoration decoration = new Decoration(pdf);
        for (Map.Entry<COSDictionary, List<Integer>> entry : numbers.entrySet()) {
            decoration.page(new PDPage(entry.getKey()), entry.getValue());
        }
    }

    private void page(PDPage page, List<Integer> numbers) throws IOException {
        String content;
        try (InputStream in = page.getContents()) {
            content = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        COSArray owners = owners(page);
        for (int number : numbers) {
            // Text in a page is written as two-byte glyph numbers; none of our fonts has one that could spell this.
            String marked = "/Figure <</MCID " + number + ">> BDC";
            if (!content.contains(marked)) {
                throw new IllegalStateException("the page has no content marked " + marked);
            }
            content = content.replace(marked, "/Artifact BMC");
            owners.set(number, COSNull.NULL);
        }
        byte[] bytes = content.getBytes(StandardCharsets.ISO_8859_1);
        page.setContents(new PDStream(pdf, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE));
    }

    /** The list that tells, for each marked-content number of a page, which tag owns it. */
    private COSArray owners(PDPage page) {
        COSDictionary root = pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
        COSArray numbers = root.getCOSDictionary(COSName.PARENT_TREE).getCOSArray(COSName.NUMS);
        int key = page.getStructParents();
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            if (numbers.getInt(i) == key && numbers.getObject(i + 1) instanceof COSArray owners) {
                return owners;
            }
        }
        throw new IllegalStateException("page without an entry in the parent tree");
    }
}
