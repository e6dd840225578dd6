package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Pages taken out of a document. */
class PagesTest {
    private static final String FOUR = """
            <h1 id="one">One</h1><p>See <a href="#three">three</a> and <a href="#four">four</a>.</p>
            <h2 id="two">Two</h2><h3>Two and a half</h3><p>two</p>
            <h2 id="three">Three</h2><h3>Deeper</h3><p>See <a href="#one">one</a>.</p>
            <h2 id="four">Four</h2><p>four</p>
            """;

    private static Printed four() {
        return Proofs.print(
                Proofs.page("h2 { page-break-before: always } @page { @bottom-center { content: 'foot' } }", FOUR));
    }

    private static byte[] only(Printed printed, Integer... pages) {
        byte[] taken = Proofs.bytes(Pages.only(printed, List.of(pages)));
        // Outside truth: veraPDF's profile ua1 (ISO 14289-1:2014).
        assertThat(PdfUa.violations(taken)).isEmpty();
        assertThat(PdfTags.faults(taken)).isEmpty();
        return taken;
    }

    @Test
    void thePagesComeInTheirOrderWithTheirWords() {
        Printed taken = Pages.only(four(), List.of(3, 1));
        byte[] pdf = only(four(), 1, 3);
        assertThat(taken.pages()).isEqualTo(2);
        assertThat(taken.pageOf()).containsOnly(entry("one", 1), entry("three", 2));
        assertThat(Proofs.bytes(taken)).isEqualTo(pdf);
        assertThat(PdfWords.text(pdf, 1)).isEqualTo(PdfWords.text(Proofs.bytes(four()), 1));
        assertThat(PdfWords.text(pdf, 2)).isEqualTo(PdfWords.text(Proofs.bytes(four()), 3));
    }

    @Test
    void linksToPagesThatAreLeftOutBecomePlainText() {
        byte[] pdf = only(four(), 1, 3);
        assertThat(PdfLinks.of(pdf)).containsExactly("1>2", "2>1");
        assertThat(PdfTags.of(pdf).stream().filter(tag -> tag.name().equals("Link")))
                .hasSize(2);
        assertThat(PdfWords.text(pdf, 1)).contains("four");
        assertThat(PdfLinks.of(only(four(), 1))).isEmpty();
    }

    // ISO 14289-1, 7.4.2: the first heading is H1, and no level is skipped.
    @Test
    void headingsStartAtTheTopAgain() {
        assertThat(headings(only(four(), 1, 2, 3, 4))).containsExactly("H1", "H2", "H3", "H2", "H3", "H2");
        assertThat(headings(only(four(), 3))).containsExactly("H1", "H2");
        assertThat(headings(only(four(), 3, 4))).containsExactly("H1", "H2", "H1");
    }

    private static List<String> headings(byte[] pdf) {
        return PdfTags.of(pdf).stream()
                .map(PdfTags.Tag::name)
                .filter(name -> name.matches("H[1-6]"))
                .toList();
    }

    @Test
    void titleAndLanguageStay() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(only(four(), 2))) {
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Rabbit care");
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
        }
    }

    @Test
    void bookmarksToLeftOutPagesGoAndTheOneAboveLeadsToWhatIsLeft() throws IOException {
        Printed whole = new Printed(PdfUaTest.whole(), 2, Map.of());
        assertThat(PdfLinks.bookmarks(only(whole, 1))).containsExactly("Ears 1");
        assertThat(PdfLinks.bookmarks(only(whole, 2))).containsExactly("Ears 1", "-Feet 1");
    }

    @Test
    void aTableOverTwoPagesKeepsItsRowsWhole() {
        String row = "<tr><th scope=\"row\">a</th><td></td><td>b</td></tr>";
        String table = "<h1>Rows</h1><table><thead><tr><th>x</th><th>y</th><th>z</th></tr></thead><tbody>"
                + row.repeat(45) + "</tbody></table>";
        Printed printed = Proofs.print(Proofs.page("", table));
        assertThat(printed.pages()).isEqualTo(2);
        long first = rows(only(printed, 1));
        long second = rows(only(printed, 2));
        assertThat(first + second).isEqualTo(46);
        assertThat(second).isPositive();
    }

    @Test
    void aTableWithATallCellKeepsAllItsRows() {
        String rows =
                "<tr><th scope=\"row\" rowspan=\"60\">tall</th><td>1</td></tr>" + "<tr><td>2</td></tr>".repeat(59);
        Printed printed = Proofs.print(Proofs.page("", "<h1>Rows</h1><table><tbody>" + rows + "</tbody></table>"));
        assertThat(printed.pages()).isEqualTo(2);
        byte[] second = Proofs.bytes(Pages.only(printed, List.of(2)));
        assertThat(PdfUa.violations(second)).isEmpty();
        assertThat(rows(second)).isEqualTo(60);
    }

    private static long rows(byte[] pdf) {
        return PdfTags.of(pdf).stream().filter(tag -> tag.name().equals("TR")).count();
    }

    @Test
    void pagesThatAreNotThereAreRefused() {
        for (List<Integer> pages : List.of(List.<Integer>of(), List.of(0), List.of(5))) {
            assertThatThrownBy(() -> Pages.only(four(), pages))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("pages " + pages + " of a document of 4");
        }
    }
}
