package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** What veraPDF does not see in the tag tree, read back from the file. */
class TagTreeTest {
    @Test
    void theLanguageIsTheManuscripts() throws IOException {
        String language =
                read(PdfUaTest.whole(), pdf -> pdf.getDocumentCatalog().getLanguage());
        assertThat(language).isEqualTo("en-GB");
        assertThat(tags(PdfUaTest.whole(), "Document", tag -> tag.getString(COSName.LANG)))
                .containsExactly("en-GB");
    }

    @Test
    void headerCellsSayWhatTheyHead() throws IOException {
        List<String> scopes = tags(PdfUaTest.whole(), "TH", TagTreeTest::scope);
        assertThat(scopes).containsExactly("Column", "Column", "Row", "Row");
    }

    @Test
    void aHeaderCellKeepsItsSpanAndNeedsNoTableHead() {
        byte[] pdf = Proofs.pdf(Proofs.page("", """
                <h1>Ears</h1>
                <table><thead><tr><th colspan="2">Wide</th></tr></thead>
                <tbody><tr><th scope="row">a</th><td>b</td></tr></tbody></table>
                <table><tr><th>c</th></tr><tr><td>d</td></tr></table>
                """));
        assertThat(tags(pdf, "TH", TagTreeTest::scope)).containsExactly("Column", "Row", "Column");
        assertThat(tags(pdf, "TH", tag -> tag.getCOSDictionary(COSName.A).getInt("ColSpan", 1)))
                .containsExactly(2, 1, 1);
        // veraPDF profile ua1, 7.2-42: rows of a table are equally long, spans counted.
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }

    @Test
    void figuresSayWhatTheyShowAndDecorationSaysNothing() throws IOException {
        assertThat(tags(PdfUaTest.whole(), "Figure", tag -> tag.getString(COSName.ALT)))
                .containsExactly("A box", "A square");
    }

    @Test
    void decorationIsMarkedAsArtifactOnThePage() throws IOException {
        String content = read(PdfUaTest.whole(), TagTreeTest::firstPage);
        assertThat(content.split("/Artifact BMC", -1))
                .as("a line and a nameless square")
                .hasSize(3);
        assertThat(content.split("/Figure <</MCID", -1))
                .as("a box and a named square")
                .hasSize(3);
    }

    @Test
    void aCaptionIsTheFirstPartOfItsTable() throws IOException {
        assertThat(tags(PdfUaTest.whole(), "Table", TagTreeTest::kidNames))
                .containsExactly(List.of("Caption", "THead", "TBody"));
    }

    @Test
    void noTagCarriesAnEmptyAlternateText() throws IOException {
        assertThat(tags(PdfUaTest.whole(), "Link", tag -> tag.containsKey(COSName.ALT)))
                .containsExactly(false, false);
    }

    private static String scope(COSDictionary tag) {
        return tag.getCOSDictionary(COSName.A).getNameAsString(COSName.getPDFName("Scope"));
    }

    private static String firstPage(PDDocument pdf) {
        try {
            return new String(pdf.getPage(0).getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> kidNames(COSDictionary tag) {
        return kids(tag).stream().map(kid -> kid.getNameAsString(COSName.S)).toList();
    }

    /** What the tags of one kind say, in reading order. They are asked while the file is open: it is read as needed. */
    private static <T> List<T> tags(byte[] file, String name, Function<COSDictionary, T> look) {
        return read(file, pdf -> {
            List<COSDictionary> found = new ArrayList<>();
            collect(pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), name, found);
            return found.stream().map(look).toList();
        });
    }

    private static void collect(COSDictionary tag, String name, List<COSDictionary> found) {
        if (name.equals(tag.getNameAsString(COSName.S))) {
            found.add(tag);
        }
        kids(tag).forEach(kid -> collect(kid, name, found));
    }

    private static List<COSDictionary> kids(COSDictionary tag) {
        List<COSDictionary> kids = new ArrayList<>();
        COSBase below = tag.getDictionaryObject(COSName.K);
        for (COSBase kid :
                below instanceof COSArray array ? array.toList() : java.util.Collections.singletonList(below)) {
            COSBase object = kid instanceof org.apache.pdfbox.cos.COSObject reference ? reference.getObject() : kid;
            if (object instanceof COSDictionary dictionary && dictionary.containsKey(COSName.S)) {
                kids.add(dictionary);
            }
        }
        return kids;
    }

    private static <T> T read(byte[] file, Function<PDDocument, T> look) {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            return look.apply(pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
