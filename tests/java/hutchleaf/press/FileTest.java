package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.page.Manuscript;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;

/** The file as a whole: fonts, dates, title, boxes, outline. */
class FileTest {
    private static final Instant DATE = Instant.parse("2000-01-01T00:00:00Z");

    @Test
    void everyFontIsEmbeddedAsASubset() throws IOException {
        TreeSet<String> names = new TreeSet<>();
        try (PDDocument pdf = Loader.loadPDF(PdfUaTest.whole())) {
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getName()).matches("[A-Z]{6}\\+.*");
                    names.add(font.getName().substring(7));
                }
            }
        }
        assertThat(names)
                .containsExactly("DejaVuSans-Bold", "Lato-Bold", "Lato-BoldItalic", "Lato-Italic", "Lato-Regular");
    }

    @Test
    void theDatesAreFixed() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfUaTest.whole())) {
            PDDocumentInformation information = pdf.getDocumentInformation();
            assertThat(information.getCreationDate().toInstant()).isEqualTo(DATE);
            assertThat(information.getModificationDate().toInstant()).isEqualTo(DATE);
            assertThat(xmp(pdf))
                    .contains("<xmp:CreateDate>2000-01-01T00:00:00Z<")
                    .contains("<xmp:ModifyDate>2000-01-01T00:00:00Z<");
        }
    }

    @Test
    void theTitleIsTheManuscriptsAndIsShown() throws IOException {
        Manuscript manuscript = new Manuscript(
                "Ears & <feet>", "en", Proofs.page("", "<h1>Ears</h1>").xhtml(), "t.ftlh");
        try (PDDocument pdf = Loader.loadPDF(Proofs.pdf(manuscript))) {
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Ears & <feet>");
            assertThat(pdf.getDocumentInformation().getProducer()).isEqualTo("Hutchleaf");
            assertThat(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                    .isTrue();
            assertThat(xmp(pdf)).contains(">Ears &amp; &lt;feet&gt;<").contains("<pdfuaid:part>1<");
        }
    }

    @Test
    void allBoxesOfAPageAreItsPaper() throws IOException {
        String style = "@page { size: 297mm 210mm }";
        try (PDDocument pdf = Loader.loadPDF(Proofs.pdf(Proofs.page(style, "<p>wide</p>")))) {
            PDPage page = pdf.getPage(0);
            assertThat(page.getMediaBox().getWidth()).isCloseTo(841.89f, within());
            assertThat(page.getMediaBox().getHeight()).isCloseTo(595.276f, within());
            for (COSName box : new COSName[] {COSName.CROP_BOX, COSName.TRIM_BOX}) {
                assertThat(page.getCOSObject().getDictionaryObject(box))
                        .as(box.getName())
                        .hasToString(page.getCOSObject()
                                .getDictionaryObject(COSName.MEDIA_BOX)
                                .toString());
            }
            assertThat(page.getCOSObject().getNameAsString("Tabs")).isEqualTo("S");
        }
    }

    @Test
    void bookmarksLeadToTheirPages() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfUaTest.whole())) {
            var ears = pdf.getDocumentCatalog().getDocumentOutline().getFirstChild();
            var feet = ears.getFirstChild();
            assertThat(ears.getTitle()).isEqualTo("Ears");
            assertThat(feet.getTitle()).isEqualTo("Feet");
            assertThat(pdf.getPages().indexOf(ears.findDestinationPage(pdf))).isEqualTo(0);
            assertThat(pdf.getPages().indexOf(feet.findDestinationPage(pdf))).isEqualTo(1);
        }
    }

    @Test
    void eachIdIsFoundOnItsPage() {
        Printed printed = Proofs.print(Proofs.page("h2 { page-break-before: always }", """
                <h1 id="first">one</h1><h2 id="second">two</h2>
                <table><tr id="row"><td id="cell">three <b id="inline">four</b></td></tr></table>
                <p id="hidden" style="display:none">five</p>
                <div id="around"><h2 id="last">six</h2></div>
                """));
        assertThat(printed.pages()).isEqualTo(3);
        assertThat(printed.pageOf())
                .containsOnly(
                        java.util.Map.entry("first", 1),
                        java.util.Map.entry("second", 2),
                        java.util.Map.entry("row", 2),
                        java.util.Map.entry("cell", 2),
                        java.util.Map.entry("inline", 2),
                        java.util.Map.entry("around", 3),
                        java.util.Map.entry("last", 3));
    }

    /** 0.05 mm in points. */
    private static org.assertj.core.data.Offset<Float> within() {
        return org.assertj.core.api.Assertions.within(0.14f);
    }

    private static String xmp(PDDocument pdf) throws IOException {
        try (var in = pdf.getDocumentCatalog().getMetadata().exportXMPMetadata()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
