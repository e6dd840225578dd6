package hutchleaf.press;

import hutchleaf.page.Manuscript;
import hutchleaf.sheet.Box;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** The last pass over a painted document: tags mended, boxes, title, language, dates and identity set. */
final class Finish {
    static final String PRODUCER = "Hutchleaf";

    /** The date in every file, so that the same content gives the same bytes. */
    private static final String DATE = "2000-01-01T00:00:00Z";

    /** The same date as PDF writes it. */
    static final String PDF_DATE = "(D:20000101000000+00'00')";

    private Finish() {}

    /**
     * The finished file's bytes.
     *
     * @param trims what is left of a page once it is cut, by its 1-based number; the others stay whole
     * @param savesInk whether rules and letters get thinner
     */
    static byte[] finish(PDDocument pdf, Manuscript manuscript, Map<Integer, Box> trims, boolean savesInk)
            throws IOException {
        Decoration.mark(pdf, TagMend.mend(pdf));
        for (PDPage page : pdf.getPages()) {
            Backdrop.drop(page.getCOSObject());
            if (savesInk) {
                SavedPage.thin(page.getCOSObject());
            }
            boxes(page);
        }
        trims.forEach((page, trim) -> trim(pdf.getPage(page - 1), trim));
        String content = String.join("\0", manuscript.title(), manuscript.language(), manuscript.xhtml());
        name(pdf, manuscript.title(), manuscript.language(), content.getBytes(StandardCharsets.UTF_8));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf.save(out);
        return out.toByteArray();
    }

    /**
     * Sets what a document says of itself, and its identity.
     *
     * @param madeFrom all that it was made from, so that the same gives the same identity
     */
    static void name(PDDocument pdf, String title, String language, byte[] madeFrom) throws IOException {
        catalog(pdf, title, language);
        information(pdf, title);
        identity(pdf, madeFrom);
    }

    static void boxes(PDPage page) {
        page.setCropBox(page.getMediaBox());
        page.setTrimBox(page.getMediaBox());
        // ISO 14289-1, 7.18.3: the tab order follows the tags.
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    }

    /** ISO 32000-1, 14.11.2: the size of the finished page after trimming, from the lower left corner. */
    private static void trim(PDPage page, Box trim) {
        double height = page.getMediaBox().getHeight();
        page.setTrimBox(new PDRectangle(
                (float) trim.x().points(),
                (float) (height - trim.bottom().points()),
                (float) trim.width().points(),
                (float) trim.height().points()));
    }

    private static void catalog(PDDocument pdf, String title, String language) throws IOException {
        PDDocumentCatalog catalog = pdf.getDocumentCatalog();
        catalog.setLanguage(language);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
        byte[] xmp = xmp(title, language).getBytes(StandardCharsets.UTF_8);
        catalog.setMetadata(new PDMetadata(pdf, new ByteArrayInputStream(xmp)));
    }

    private static void information(PDDocument pdf, String title) {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.clear();
        date.set(2000, Calendar.JANUARY, 1, 0, 0, 0);
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setProducer(PRODUCER);
        information.setCreationDate(date);
        information.setModificationDate(date);
        pdf.setDocumentInformation(information);
    }

    /** Both halves of the ID, which PDFBox would otherwise take from the clock. */
    private static void identity(PDDocument pdf, byte[] madeFrom) {
        byte[] digest = Digest.of(madeFrom);
        COSString id = new COSString(Arrays.copyOf(digest, 16));
        COSArray both = new COSArray();
        both.add(id);
        both.add(id);
        pdf.getDocument().setDocumentID(both);
    }

    /** What the file says of itself in XML, PDF/UA's mark included (ISO 14289-1, 5). */
    static String xmp(String title, String language) {
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about=""
                    xmlns:dc="http://purl.org/dc/elements/1.1/"
                    xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                    xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
                    xmlns:xmp="http://ns.adobe.com/xap/1.0/">
                <dc:format>application/pdf</dc:format>
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>
                <dc:language><rdf:Bag><rdf:li>LANGUAGE</rdf:li></rdf:Bag></dc:language>
                <pdf:Producer>PRODUCER</pdf:Producer>
                <xmp:CreateDate>DATE</xmp:CreateDate>
                <xmp:ModifyDate>DATE</xmp:ModifyDate>
                <xmp:MetadataDate>DATE</xmp:MetadataDate>
                <pdfuaid:part>1</pdfuaid:part>
                </rdf:Description>
                </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="r"?>
                """.replace("PRODUCER", PRODUCER)
                .replace("DATE", DATE)
                .replace("LANGUAGE", Xml.escape(language))
                .replace("TITLE", Xml.escape(title));
    }
}
