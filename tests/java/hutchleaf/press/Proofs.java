package hutchleaf.press;

import hutchleaf.page.Manuscript;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Prints small pages for the tests of this package. */
final class Proofs {
    static final String SQUARE = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50">
            <rect x="0" y="0" width="100" height="50" fill="none" stroke="black" stroke-width="4"/>
            </svg>
            """;

    static final String STYLE = "@page { size: 215.9mm 279.4mm; margin: 20mm } "
            + "body { margin: 0; font-family: Lato, 'DejaVu Sans'; font-size: 12pt; line-height: 16pt } "
            + "p, h1, h2, div { margin: 0 } ";

    private static final Map<String, String> FIGURES = new HashMap<>(Map.of("figures/square.svg", SQUARE));
    private static final Press PRESS =
            new Press(path -> Optional.ofNullable(FIGURES.get(path)).map(svg -> svg.getBytes(StandardCharsets.UTF_8)));

    private Proofs() {}

    static Manuscript page(String style, String body) {
        return manuscript("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><style>" + STYLE + style
                + "</style></head><body>" + body + "</body></html>");
    }

    static Manuscript manuscript(String xhtml) {
        return new Manuscript("Rabbit care", "en-GB", xhtml, "templates/guide.ftlh");
    }

    /** The printed page; fails when anything was wrong with it. */
    static Printed print(Manuscript manuscript) {
        Problems problems = new Problems();
        Optional<Printed> printed = PRESS.print(manuscript, problems);
        if (!problems.isEmpty()) {
            throw new AssertionError("problems: " + problems.sorted());
        }
        return printed.orElseThrow();
    }

    static byte[] pdf(Manuscript manuscript) {
        return bytes(print(manuscript));
    }

    static byte[] bytes(Printed printed) {
        try (InputStream in = printed.open()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is wrong with a page, one line each; fails when it was printed all the same. */
    static List<String> refusals(Manuscript manuscript) {
        return refusals(PRESS, manuscript);
    }

    static List<String> refusals(Press press, Manuscript manuscript) {
        Problems problems = new Problems();
        if (press.print(manuscript, problems).isPresent()) {
            throw new AssertionError("printed in spite of everything: " + problems.sorted());
        }
        return problems.sorted().stream().map(Problem::toString).toList();
    }
}
