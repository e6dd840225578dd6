package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StartsTest {
    private static final String STYLE = ".filler { display: none } "
            + ".filler-on { display: block; page-break-before: always } .part { page-break-before: always } ";

    private static String part(String id, String start, int pages) {
        return "<div class=\"filler\">Notes</div><div class=\"part\" id=\"" + id + "\" data-start=\"" + start
                + "\" data-place=\"content/" + id + ".md:1\"><h2>" + id + "</h2>"
                + "<p class=\"part\">more</p>".repeat(pages - 1) + "</div>";
    }

    @Test
    void fillerPagesBringEachPartToItsSide() {
        String body = "<h1>Cover</h1>" + part("a", "even", 1) + part("b", "even", 2) + part("c", "even", 3)
                + part("d", "odd", 1) + part("e", "even", 1) + part("f", "odd", 1);
        Printed printed = Proofs.print(Proofs.page(STYLE, body));
        assertThat(printed.pageOf())
                .containsOnly(
                        java.util.Map.entry("a", 2),
                        java.util.Map.entry("b", 4),
                        java.util.Map.entry("c", 6),
                        java.util.Map.entry("d", 9),
                        java.util.Map.entry("e", 10),
                        java.util.Map.entry("f", 11));
        assertThat(printed.pages()).isEqualTo(11);
        assertThat(PdfWords.of(Proofs.bytes(printed), "Notes"))
                .extracting(PdfWords.Word::page)
                .containsExactly(3);
    }

    @Test
    void aPartWithoutAFillerOnTheWrongSideIsRefusedWithItsLine() {
        String body = "<h1>Cover</h1><div class=\"part\" data-start=\"odd\" data-place=\"content/a.md:3\">a</div>";
        assertThat(Proofs.refusals(Proofs.page(STYLE, body)))
                .containsExactly("content/a.md:3: this starts on page 2, and should start on an odd page;"
                        + " put a filler page of one page before it");
    }

    @Test
    void aFillerThatIsNotOnePageIsRefusedAndDoesNotLoop() {
        String style = ".filler { display: none } .filler-on { display: block } .part { page-break-before: always } ";
        String body = "<h1>Cover</h1>" + part("a", "odd", 1);
        assertThat(Proofs.refusals(Proofs.page(style, body)))
                .containsExactly("content/a.md:1: this starts on page 2, and should start on an odd page;"
                        + " put a filler page of one page before it");
    }
}
