package hutchleaf.press;

import hutchleaf.page.Manuscript;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** The last touches: title, language, fixed dates and identifier, page boxes, tags the engine leaves out. */
final class Finish {
    private static final String DATE = "2000-01-01T00:00:00Z";

    private Finish() {}

    static void apply(PDDocument pdf, Manuscript manuscript) throws IOException {
        PDDocumentCatalog catalog = pdf.getDocumentCatalog();
        catalog.setLanguage(manuscript.language());
        PDViewerPreferences viewer = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        viewer.setDisplayDocTitle(true);
        catalog.setViewerPreferences(viewer);
        pdf.setDocumentInformation(information(manuscript));
        PDMetadata metadata =
                new PDMetadata(pdf, new ByteArrayInputStream(xmp(manuscript).getBytes(StandardCharsets.UTF_8)));
        metadata.getCOSObject().setItem(COSName.TYPE, COSName.METADATA);
        metadata.getCOSObject().setItem(COSName.SUBTYPE, COSName.getPDFName("XML"));
        catalog.setMetadata(metadata);
        for (PDPage page : pdf.getPages()) {
            page.setCropBox(page.getMediaBox());
            page.setTrimBox(page.getMediaBox());
            if (!page.getAnnotations().isEmpty()) {
                page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
            }
        }
        TagRepair.apply(catalog);
        CRC32 sum = new CRC32();
        sum.update(manuscript.xhtml().getBytes(StandardCharsets.UTF_8));
        pdf.setDocumentId(sum.getValue());
    }

    private static PDDocumentInformation information(Manuscript manuscript) {
        Calendar fixed = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        fixed.clear();
        fixed.set(2000, Calendar.JANUARY, 1);
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(manuscript.title());
        information.setProducer("Hutchleaf");
        information.setCreationDate(fixed);
        information.setModificationDate(fixed);
        return information;
    }

    /** XMP that says the same as the information dictionary, and PDF/UA-1 (ISO 14289-1, clause 5). */
    private static String xmp(Manuscript manuscript) {
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                 <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                  <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
                   <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                   <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
                  </rdf:Description>
                  <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
                   <xmp:CreateDate>%s</xmp:CreateDate><xmp:ModifyDate>%s</xmp:ModifyDate>
                  </rdf:Description>
                  <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><pdf:Producer>Hutchleaf</pdf:Producer></rdf:Description>
                  <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part></rdf:Description>
                 </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="w"?>
                """.formatted(escape(manuscript.title()), escape(manuscript.language()), DATE, DATE);
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }
}
