package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.page.Manuscript;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing in a page reaches the disk or the net. */
class LockTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "<img src='http://example.org/a.svg' alt=''/>|'http://example.org/a.svg' is not a figure",
                "<img src='file:///etc/passwd' alt=''/>|'file:///etc/passwd' is not a figure",
                "<img src='/etc/hosts.svg' alt=''/>|'/etc/hosts.svg' is not a figure",
                "<img src='hutch:figures/../../secret.svg' alt=''/>|'hutch:figures/../../secret.svg' is not a figure",
                "<img src='hutch:figures/%2e%2e/a.svg' alt=''/>|'hutch:figures/%2e%2e/a.svg' is not a figure",
                "<img src='data:image/svg+xml,x' alt=''/>|'data:image/svg+xml,x' is not a figure",
                "<img src='hutch:figures/none.svg' alt=''/>|there is no figure 'hutch:figures/none.svg'",
                "<img src='hutch:figures/square.svg'/>|'hutch:figures/square.svg' has no alt text",
                "<a href='http://example.org'>x</a>|the link 'http://example.org' leaves the document",
                "<a href='file:x.pdf'>x</a>|the link 'file:x.pdf' leaves the document",
                "<a href='#none'>x</a>|the link '#none' leads nowhere",
                "<link href='http://example.org/a.css'/>|<link> 'http://example.org/a.css' has no place on a printed page",
                "<base href='http://example.org/'/>|<base> 'http://example.org/' has no place on a printed page",
                "<object data='file:a.svg'/>|<object> 'file:a.svg' has no place on a printed page",
                "<iframe src='http://example.org'/>|<iframe> 'http://example.org' has no place on a printed page",
                "<script>1</script>|<script> has no place on a printed page",
                "<b onclick='x'>x</b>|the event 'onclick' has no place on a printed page",
                "<b style='background:url(http://example.org/a)'>x</b>|the style reaches for 'http://example.org/a'",
                "<b style='background: u\\72l( \"file:a.svg\")'>x</b>|the style reaches for 'file:a.svg'",
                "<style>@import 'http://example.org/a.css';</style>|the style reaches for 'http://example.org/a.css'",
                "<style>@import url(file:a.css);</style>|the style reaches for 'url(file:a.css)'",
                "<style>@font-face { font-family: x }</style>|the style reaches for '@font-face'",
                "<svg><image href='file:a.png'/></svg>|a drawing must not hold <image>",
                "<svg><use href='http://example.org/a.svg#b'/></svg>"
                        + "|a drawing must not reach outside itself: 'http://example.org/a.svg#b'",
                "<table background='file:a.png'><tr><td>x</td></tr></table>|'file:a.png' is fetched by nobody here"
            })
    void whatReachesOutIsRefusedWithItsLine(String part, String what) {
        Manuscript page = Proofs.page(
                "",
                "<div data-place=\"content/a.md:1\"><p>fine</p></div><div data-place=\"content/a.md:7\">" + part
                        + "</div>");
        assertThat(Proofs.refusals(page)).anyMatch(line -> line.startsWith("content/a.md:7: " + what + "; "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"figures/../a.svg", "../figures/a.svg", "figures//a.svg", "figures/a.png", "figures/a.svg\n"})
    void aPathThatIsNoPlainFigureIsNeverAskedFor(String path) {
        List<String> asked = new ArrayList<>();
        Press press = new Press(figure -> {
            asked.add(figure);
            return Optional.empty();
        });
        Proofs.refusals(press, Proofs.page("", "<img src=\"hutch:" + path + "\" alt=\"\"/>"));
        assertThat(asked).isEmpty();
    }

    @Test
    void aDoctypeIsRefusedWithItsLine() {
        String xhtml = "<?xml version=\"1.0\"?>\n\n<!DOCTYPE html [<!ENTITY a SYSTEM \"file:///etc/passwd\">]>\n"
                + "<html xmlns=\"http://www.w3.org/1999/xhtml\"><body>&a;</body></html>";
        assertThat(Proofs.refusals(Proofs.manuscript(xhtml)))
                .singleElement()
                .asString()
                .startsWith("templates/guide.ftlh:3: the page is not XHTML: ");
    }

    @Test
    void brokenXhtmlIsRefusedWithItsLine() {
        String xhtml = "<html xmlns=\"http://www.w3.org/1999/xhtml\">\n<body>\n<p>open\n</body></html>";
        assertThat(Proofs.refusals(Proofs.manuscript(xhtml)))
                .singleElement()
                .asString()
                .startsWith("templates/guide.ftlh:4: the page is not XHTML: ");
    }
}
