package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.junit.jupiter.api.Test;

/** Bound files read back: nothing of a part is lost, nothing of another gets in its way. */
class MergeTest {
    private static final String WIDE = "@page { size: 297mm 210mm } h2 { page-break-before: always } ";

    /** Two pages with the ids and the bookmark of the other documents here, and links both ways. */
    private static final String LINKED = """
            <h1 id="ears">Own rabbit</h1><p><a href="#feet">on</a></p>
            <h2 id="feet">Next</h2><p>Back to <a href="#ears">the start</a>.</p><h2 id="own">Last</h2><p>end</p>
            """;

    private static Printed whole() throws IOException {
        byte[] pdf = PdfUaTest.whole();
        return new Printed(pdf, 2, Map.of("ears", 1, "feet", 2));
    }

    private static Printed linked() {
        return Proofs.print(Proofs.page(WIDE, LINKED));
    }

    private static byte[] bound(Printed... parts) {
        return Proofs.bytes(Merge.of("Cards", "en-GB", List.of(parts)));
    }

    // Outside truth: veraPDF's profile ua1 (ISO 14289-1:2014).
    @Test
    void aBoundFileIsPdfUaAsItsPartsAre() throws IOException {
        byte[] bound = bound(linked(), whole(), linked());
        assertThat(PdfUa.violations(bound)).isEmpty();
        assertThat(PdfTags.faults(bound)).isEmpty();
    }

    @Test
    void aBoundFileCanBeBoundAgainAndPagesTakenOutOfIt() throws IOException {
        Printed both = Merge.of("Both", "en-GB", List.of(linked(), whole()));
        byte[] again = bound(whole(), both);
        byte[] some = Proofs.bytes(Pages.only(both, List.of(2, 4, 5)));
        for (byte[] pdf : List.of(again, some)) {
            assertThat(PdfUa.violations(pdf)).isEmpty();
            assertThat(PdfTags.faults(pdf)).isEmpty();
        }
        assertThat(PdfLinks.of(again)).containsExactly("1>2", "2>1", "3>4", "4>3", "6>7", "7>6");
        assertThat(PdfLinks.of(some)).containsExactly("2>3", "3>2");
    }

    @Test
    void eachPageKeepsItsPaperAndItsWords() throws IOException {
        byte[] bound = bound(linked(), whole());
        try (PDDocument pdf = Loader.loadPDF(bound)) {
            List<String> sizes = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                PDRectangle box = page.getMediaBox();
                assertThat(page.getTrimBox()).hasToString(box.toString());
                assertThat(page.getCropBox()).hasToString(box.toString());
                sizes.add(Math.round(box.getWidth() / 72 * 25.4) + "x" + Math.round(box.getHeight() / 72 * 25.4));
            }
            assertThat(sizes).containsExactly("297x210", "297x210", "297x210", "216x279", "216x279");
        }
        for (int page = 1; page <= 3; page++) {
            assertThat(PdfWords.text(bound, page)).isEqualTo(PdfWords.text(Proofs.bytes(linked()), page));
        }
        assertThat(PdfWords.text(bound, 4)).isEqualTo(PdfWords.text(PdfUaTest.whole(), 1));
        assertThat(PdfWords.text(bound, 5)).isEqualTo(PdfWords.text(PdfUaTest.whole(), 2));
    }

    @Test
    void thePartsStandAsPartsOfOneDocumentWithTheirOwnLanguage() throws IOException {
        Printed latin = new Press(path -> java.util.Optional.empty())
                .print(
                        new hutchleaf.page.Manuscript(
                                "Auris", "la", Proofs.page("", "<h1>Auris</h1>").xhtml(), "t"),
                        new hutchleaf.problem.Problems())
                .orElseThrow();
        List<PdfTags.Tag> tags = PdfTags.of(bound(whole(), latin));
        assertThat(tags.stream().filter(tag -> tag.name().equals("Document")))
                .containsExactly(new PdfTags.Tag("/Document", "en-GB", "", "", 2));
        assertThat(tags.stream().filter(tag -> tag.name().equals("Part")).map(tag -> tag.path() + " " + tag.lang()))
                .containsExactly("/Document/Part en-GB", "/Document/Part la");
    }

    @Test
    void headerCellsFiguresAndListsComeThrough() throws IOException {
        List<PdfTags.Tag> tags = PdfTags.of(bound(linked(), whole()));
        assertThat(tags.stream().filter(tag -> tag.name().equals("TH")).map(PdfTags.Tag::scope))
                .containsExactly("Column", "Column", "Row", "Row");
        assertThat(tags.stream().filter(tag -> tag.name().equals("Figure")).map(PdfTags.Tag::alt))
                .containsExactly("A box", "A square");
        assertThat(tags.stream().filter(tag -> tag.name().equals("LI"))).hasSize(5);
    }

    @Test
    void linksLeadWithinTheirPartThoughTheIdsAreTheSame() throws IOException {
        assertThat(PdfLinks.of(bound(linked(), whole(), linked())))
                .containsExactly("1>2", "2>1", "4>5", "5>4", "6>7", "7>6");
    }

    @Test
    void destinationsWithTheSameNameLeadWithinTheirPart() throws IOException {
        byte[] bound = bound(named(whole()), named(linked()));
        assertThat(PdfLinks.of(bound)).containsExactly("1>2", "2>1", "3>4", "4>3");
        assertThat(PdfUa.violations(bound)).isEmpty();
    }

    /** The same file with its links by name: "to 1" for the first link, and so on. */
    private static Printed named(Printed printed) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Proofs.bytes(printed))) {
            COSArray names = new COSArray();
            for (PDPage page : pdf.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    COSString name = new COSString("to " + (names.size() / 2 + 1));
                    COSDictionary action = ((PDActionGoTo) ((PDAnnotationLink) annotation).getAction()).getCOSObject();
                    names.add(name);
                    names.add(action.getDictionaryObject(COSName.D));
                    action.setItem(COSName.D, name);
                }
            }
            COSDictionary leaf = new COSDictionary();
            leaf.setItem(COSName.NAMES, names);
            COSDictionary tree = new COSDictionary();
            tree.setItem(COSName.DESTS, leaf);
            pdf.getDocumentCatalog().getCOSObject().setItem(COSName.NAMES, tree);
            return saved(pdf, printed);
        }
    }

    private static Printed saved(PDDocument pdf, Printed printed) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf.save(out);
        return new Printed(out.toByteArray(), printed.pages(), printed.pageOf());
    }

    @Test
    void theBookmarksOfEachPartFollowOneAnother() throws IOException {
        assertThat(PdfLinks.bookmarks(bound(linked(), whole(), whole())))
                .containsExactly("Ears 4", "-Feet 5", "Ears 6", "-Feet 7");
        assertThat(PdfLinks.bookmarks(bound(linked()))).isEmpty();
    }

    @Test
    void pagesOfIdsAreCountedOnAndTheFirstPartWins() throws IOException {
        Printed bound = Merge.of("Cards", "en-GB", List.of(whole(), linked()));
        assertThat(bound.pages()).isEqualTo(5);
        assertThat(bound.pageOf()).containsOnly(entry("ears", 1), entry("feet", 2), entry("own", 5));
    }

    @Test
    void theFileSpeaksOfItselfAsAWhole() throws IOException {
        byte[] bound = Proofs.bytes(Merge.of("Ärger & (Ohren)", "de", List.of(whole(), linked())));
        try (PDDocument pdf = Loader.loadPDF(bound)) {
            var information = pdf.getDocumentInformation();
            var catalog = pdf.getDocumentCatalog();
            String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertThat(information.getTitle()).isEqualTo("Ärger & (Ohren)");
            assertThat(information.getProducer()).isEqualTo("Hutchleaf");
            assertThat(information.getCreationDate().toInstant()).isEqualTo(Instant.parse("2000-01-01T00:00:00Z"));
            assertThat(information.getModificationDate().toInstant()).isEqualTo(Instant.parse("2000-01-01T00:00:00Z"));
            assertThat(catalog.getLanguage()).isEqualTo("de");
            assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
            assertThat(xmp).contains(">Ärger &amp; (Ohren)<").contains("<pdfuaid:part>1<");
        }
        assertThat(new String(bound, StandardCharsets.ISO_8859_1).split("<x:xmpmeta", -1))
                .as("one XMP")
                .hasSize(2);
    }

    @Test
    void theSamePartsGiveTheSameBytesWhetherBoundBeforeOrNot() throws IOException {
        Printed shared = whole();
        byte[] first = bound(linked(), shared);
        bound(shared);
        assertThat(bound(linked(), shared)).isEqualTo(first);
        assertThat(bound(linked(), whole())).isEqualTo(first);
    }

    @Test
    void theIdentityFollowsWhatIsBound() throws IOException {
        assertThat(identity(bound(linked(), whole())))
                .isEqualTo(identity(bound(linked(), whole())))
                .isNotEqualTo(identity(bound(whole(), linked())))
                .isNotEqualTo(identity(Proofs.bytes(Merge.of("Other", "en-GB", List.of(linked(), whole())))));
    }

    private static String identity(byte[] file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            return pdf.getDocument().getDocumentID().getObject(0).toString();
        }
    }

    @Test
    void aFontThatHasAllGlyphsOfAnotherStandsForIt() {
        Printed much = Proofs.print(Proofs.page("", "<h1>The quick brown fox</h1><p>jumps over a lazy dog</p>"));
        Printed little = Proofs.print(Proofs.page("", "<h1>The fox</h1><p>over</p>"));
        Printed other = Proofs.print(Proofs.page("", "<h1>The fox</h1><p>Zoë</p>"));
        assertThat(fontFiles(bound(much))).hasSize(2);
        assertThat(fontFiles(bound(much, much))).as("the same part twice").hasSize(2);
        byte[] both = bound(little, much);
        assertThat(fontFiles(both)).as("fewer glyphs").hasSize(2);
        assertThat(PdfWords.text(both, 1)).contains("The fox").contains("over");
        byte[] apart = bound(much, other);
        assertThat(fontFiles(apart))
                .as("a glyph that is not in the larger font")
                .hasSize(3);
        assertThat(PdfWords.text(apart, 2)).contains("Zoë");
        assertThat(PdfUa.violations(both)).isEmpty();
        assertThat(PdfUa.violations(apart)).isEmpty();
    }

    /** The names of embedded fonts, by the numbers of their files. */
    private static Map<String, String> fontFiles(byte[] file) {
        Map<String, String> found = new TreeMap<>();
        try (PDDocument pdf = Loader.loadPDF(file)) {
            for (var key : pdf.getDocument().getXrefTable().keySet()) {
                COSBase object = pdf.getDocument().getObjectFromPool(key).getObject();
                if (object instanceof COSDictionary font && font.containsKey(COSName.FONT_FILE2)) {
                    found.put(key.toString(), font.getNameAsString(COSName.FONT_NAME));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }

    @Test
    void theSamePartTwiceIsHardlyLarger() throws IOException {
        int once = bound(whole()).length;
        assertThat(bound(whole(), whole()).length).isBetween(once, once * 3 / 2);
    }

    @Test
    void whatThePressNeverMakesIsRefusedRatherThanLost() throws IOException {
        Printed form;
        try (PDDocument pdf = Loader.loadPDF(PdfUaTest.whole())) {
            pdf.getDocumentCatalog().getCOSObject().setItem(COSName.ACRO_FORM, new COSDictionary());
            form = saved(pdf, whole());
        }
        assertThatThrownBy(() -> bound(linked(), form))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("AcroForm");
    }

    @Test
    void nothingCannotBeBound() {
        assertThatThrownBy(() -> bound()).isInstanceOf(IllegalArgumentException.class);
    }
}
