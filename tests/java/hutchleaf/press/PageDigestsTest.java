package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which pages have to be printed again. */
class PageDigestsTest {
    private static final String STYLE = "h2 { page-break-before: always } td { border: 0.5pt solid black } "
            + "#foot { position: running(foot) } @page { @bottom-center { content: element(foot) } } ";

    private static final String BODY = """
            <div id="foot">Edition of 3 May 2026 · Quarry Bend</div>
            <h1>Ears</h1><p>Look into <b>both</b> ears for 10 seconds.</p>
            <h2>Feet</h2><table><tr><td>sore hock</td><td>4 feet</td></tr></table>
            <p><svg aria-label="A line" width="60mm" height="10mm" viewBox="0 0 60 10">
            <path d="M0 5H60" stroke="black" stroke-width="1"/></svg></p>
            """;

    private static List<String> digests(String style, String body, String ignored) {
        return PageDigests.of(Proofs.print(Proofs.page(style, body)), ignored);
    }

    private static List<String> digests(String body) {
        return digests(STYLE, body, "");
    }

    @Test
    void aDocumentPrintedAgainHasTheSame() {
        List<String> first = digests(BODY);
        assertThat(first).hasSize(2).doesNotHaveDuplicates().allMatch(digest -> digest.matches("[0-9a-f]{32}"));
        assertThat(digests(BODY)).isEqualTo(first);
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource({
        "both</b> ears, both</b> feet",
        "10 seconds, 11 seconds",
        "for 10, for10",
        "Look into, Into look",
    })
    void aChangeOnPageOneIsSeenThereAndNowhereElse(String from, String to) {
        List<String> changed = digests(BODY.replace(from, to));
        assertThat(changed.get(0)).isNotEqualTo(digests(BODY).get(0));
        assertThat(changed.get(1)).isEqualTo(digests(BODY).get(1));
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource({
        "M0 5H60, M0 6H60",
        "stroke-width=\"1\", stroke-width=\"2\"",
        "4 feet, 3 feet",
        "</td></tr></table>, </td><td></td></tr></table>",
    })
    void aChangeOnPageTwoIsSeenThereAndNowhereElse(String from, String to) {
        List<String> changed = digests(BODY.replace(from, to));
        assertThat(changed.get(0)).isEqualTo(digests(BODY).get(0));
        assertThat(changed.get(1)).isNotEqualTo(digests(BODY).get(1));
    }

    /** New letters make another subset with another name, in a font that both pages use. */
    @Test
    void newLettersElsewhereDoNotCount() {
        List<String> changed = digests(BODY + "<p>Zyx &amp; Qqq %!</p>");
        assertThat(changed.get(0)).isEqualTo(digests(BODY).get(0));
        assertThat(changed.get(1)).isNotEqualTo(digests(BODY).get(1));
    }

    @Test
    void anotherPictureIsSeen() {
        String page = "<h1>Box</h1><p><img src=\"hutch:figures/a.svg\" alt=\"A box\" style=\"width: 50mm\"/></p>";
        Map<String, String> figures = new HashMap<>(Map.of("figures/a.svg", Proofs.SQUARE));
        Press first = press(figures);
        List<String> before = PageDigests.of(print(first, page), "");
        assertThat(PageDigests.of(print(press(figures), page), "")).isEqualTo(before);
        figures.put("figures/a.svg", Proofs.SQUARE.replace("stroke-width=\"4\"", "stroke-width=\"5\""));
        assertThat(PageDigests.of(print(press(figures), page), "")).isNotEqualTo(before);
    }

    private static Press press(Map<String, String> figures) {
        Map<String, String> copy = Map.copyOf(figures);
        return new Press(path -> Optional.ofNullable(copy.get(path)).map(svg -> svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static Printed print(Press press, String body) {
        return press.print(Proofs.page("", body), new hutchleaf.problem.Problems())
                .orElseThrow();
    }

    @Test
    void anotherPaperIsSeen() {
        assertThat(digests(STYLE + "@page { size: 210mm 297mm }", BODY, "")).doesNotContainAnyElementsOf(digests(BODY));
    }

    @Test
    void theLineOfTheEditionDoesNotCountHoweverLongItIs() {
        String later = "Edition of 28 September 2027, mended";
        List<String> before = digests(STYLE, BODY, "Edition of 3 May 2026");
        assertThat(digests(STYLE, BODY.replace("Edition of 3 May 2026", later), later))
                .isEqualTo(before);
        assertThat(digests(STYLE, BODY.replace("Edition of 3 May 2026", later), ""))
                .doesNotContainAnyElementsOf(before);
        assertThat(digests(STYLE, BODY.replace("Quarry Bend", "Another club"), "Edition of 3 May 2026"))
                .doesNotContainAnyElementsOf(before);
    }

    @Test
    void theLineOfTheEditionMayBeBroken() {
        String broken = BODY.replace("Edition of 3 May 2026", "Edition<br/>of 3 May<br/>2026");
        assertThat(digests(STYLE, broken, "Edition of 3 May 2026"))
                .isEqualTo(digests(STYLE, BODY, "Edition of 3 May 2026"));
    }

    @Test
    void aPageIsTheSameInABoundFileAndTakenOut() {
        Printed printed = Proofs.print(Proofs.page(STYLE, BODY));
        Printed other = Proofs.print(Proofs.page("", "<h1>Other letters: Qq Zz</h1>"));
        List<String> alone = PageDigests.of(printed, "");
        assertThat(PageDigests.of(Merge.of("Both", "en-GB", List.of(other, printed)), "")
                        .subList(1, 3))
                .isEqualTo(alone);
        assertThat(PageDigests.of(Pages.only(printed, List.of(2)), "")).containsExactly(alone.get(1));
    }
}
