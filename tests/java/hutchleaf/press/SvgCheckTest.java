package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SvgCheckTest {
    private static List<String> check(String path, byte[] svg) {
        Problems problems = new Problems();
        SvgCheck.check(path, svg, problems);
        return problems.sorted().stream().map(Problem::toString).toList();
    }

    /** A drawing whose fourth line is the one to look at. */
    private static byte[] drawing(String fourthLine) {
        return ("<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\""
                        + " xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 9 9\">\n<path id=\"a\" d=\"M0 0\"/>\n"
                        + fourthLine + "\n</svg>")
                .getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "<style>path { fill: red }</style>|a drawing must not hold <style>",
                "<script>1</script>|a drawing must not hold <script>",
                "<foreignObject/>|a drawing must not hold <foreignObject>",
                "<image href='a.png'/>|a drawing must not hold <image>",
                "<text>ear</text>|a drawing must not hold <text>",
                "<animate attributeName='x'/>|a drawing must not hold <animate>",
                "<path d='M0 0' onload='x'/>|a drawing must not hold the event 'onload'",
                "<path d='M0 0' onClick='x'/>|a drawing must not hold the event 'onClick'",
                "<use href='b.svg#a'/>|a drawing must not reach outside itself: 'b.svg#a'",
                "<use xlink:href='http://example.org/#a'/>|a drawing must not reach outside itself: 'http://example.org/#a'",
                "<use xlink:href='data:image/png,x'/>|a drawing must not reach outside itself: 'data:image/png,x'",
                "<path fill='url(b.svg#a)'/>|a drawing must not reach outside itself: 'url(b.svg#a)'",
                "<path fill='URL( \"b.svg#a\")'/>|a drawing must not reach outside itself: 'URL( \"b.svg#a\")'",
                "<path style='fill:u\\72l(b.svg)'/>|a drawing must not reach outside itself: 'fill:u\\72l(b.svg)'",
                "<g xml:base='http://example.org/'/>|a drawing must not hold xml:base",
                "<?xml-stylesheet href='a.css'?>|a drawing must not hold <?xml-stylesheet?>",
                "<path d='M0 0'>|the drawing is not XML"
            })
    void whatIsNotShapesIsRefusedWithItsLine(String line, String what) {
        assertThat(check("figures/ear.svg", drawing(line)))
                .anyMatch(said -> said.matches("content/figures/ear\\.svg:[45]: \\Q" + what + "\\E.*")
                        && (said.contains(".svg:4:") || what.contains("not XML")));
    }

    @Test
    void shapesThatReferToEachOtherPass() {
        assertThat(
                        check(
                                "figures/ear.svg",
                                drawing(
                                        "<use href='#a'/><use xlink:href='#a'/><path fill='url(#a)' style='stroke:url(\"#a\")'/>")))
                .isEmpty();
    }

    @Test
    void aDoctypeIsRefusedBeforeItsEntitiesGrow() {
        String bomb = "<!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>\n"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\"><desc>&b;</desc></svg>";
        assertThat(check("figures/ear.svg", bomb.getBytes(StandardCharsets.UTF_8)))
                .containsExactly("content/figures/ear.svg:1: a drawing must not hold a DOCTYPE; delete that line");
    }

    @Test
    void aDrawingWithoutAViewBoxIsRefused() {
        byte[] svg = "<svg xmlns=\"http://www.w3.org/2000/svg\"/>".getBytes(StandardCharsets.UTF_8);
        assertThat(check("figures/ear.svg", svg))
                .containsExactly("content/figures/ear.svg:1: a drawing needs a viewBox to be scaled by;"
                        + " give <svg> a viewBox");
    }

    @Test
    void aPageWithAHostileFigureNamesTheFiguresLine() {
        Press press = new Press(path -> Optional.of(drawing("<script>1</script>")));
        assertThat(Proofs.refusals(press, Proofs.page("", "<img src=\"hutch:figures/ear.svg\" alt=\"ear\"/>")))
                .containsExactly("content/figures/ear.svg:4: a drawing must not hold <script>;"
                        + " save it as plain SVG of shapes only");
    }

    @ParameterizedTest
    @MethodSource("ourFigures")
    void ourOwnFiguresPass(Path figure) throws IOException {
        assertThat(check("figures/" + figure.getFileName(), Files.readAllBytes(figure)))
                .isEmpty();
    }

    static List<Path> ourFigures() {
        try (Stream<Path> files = Files.list(Path.of("content/figures"))) {
            return files.filter(file -> file.toString().endsWith(".svg"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
