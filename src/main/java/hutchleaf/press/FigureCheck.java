package hutchleaf.press;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.Optional;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Checks that each figure a page shows is there and holds shapes only. */
final class FigureCheck {
    private FigureCheck() {}

    static void check(Document document, Figures figures, Place fallback, Problems problems) {
        for (Element image : Dom.elements(document, element -> Dom.name(element).equals("img"))) {
            LockCheck.figurePath(image.getAttribute("src")).ifPresent(path -> {
                Optional<byte[]> svg = figures.svg(path);
                svg.ifPresent(bytes -> SvgCheck.check(path, bytes, problems));
                if (svg.isEmpty()) {
                    problems.add(Dom.place(image, fallback), "there is no figure '" + path + "'", "add it to figures/");
                }
            });
        }
    }
}
