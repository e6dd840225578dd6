package hutchleaf.press;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Sees that elements with {@code data-start="even"} or {@code "odd"} start on such a page, by switching on the filler
 * page ({@code class="filler"}) just before them.
 */
final class Starts {
    private static final String FILLER = "filler";
    private static final String ON = "filler-on";

    private final List<Element> elements;
    private final Place fallback;
    private final Problems problems;

    Starts(Document document, Place fallback, Problems problems) {
        this.elements = Dom.elements(document, element -> element.hasAttribute("data-start"));
        this.fallback = fallback;
        this.problems = problems;
    }

    /**
     * Works forward through the document: each filler switched moves all that follows by one page, so one layout is
     * enough to set them all. True when the page must be laid out again.
     */
    boolean step(Galley galley) {
        int shift = 0;
        for (Element element : elements) {
            OptionalInt page = galley.page(element);
            Optional<Element> filler = filler(element);
            if (page.isPresent() && filler.isPresent() && !right(element, page.getAsInt() + shift)) {
                shift += flip(filler.get());
            }
        }
        return shift != 0;
    }

    /** Adds an error for each element that still starts on the wrong side. */
    void report(Galley galley) {
        for (Element element : elements) {
            OptionalInt page = galley.page(element);
            if (page.isPresent() && !right(element, page.getAsInt())) {
                problems.add(
                        Dom.place(element, fallback),
                        "this starts on page " + page.getAsInt() + ", and should start on an "
                                + element.getAttribute("data-start") + " page",
                        "put a filler page of one page before it");
            }
        }
    }

    private static Optional<Element> filler(Element element) {
        return Dom.before(element).filter(before -> Dom.hasClass(before, FILLER));
    }

    /** Pages that the flip adds. */
    private static int flip(Element filler) {
        if (Dom.hasClass(filler, ON)) {
            Dom.removeClass(filler, ON);
            return -1;
        }
        Dom.addClass(filler, ON);
        return 1;
    }

    private static boolean right(Element element, int page) {
        String wanted = element.getAttribute("data-start");
        return switch (wanted) {
            case "even" -> page % 2 == 0;
            case "odd" -> page % 2 == 1;
            default -> throw new IllegalArgumentException("data-start='" + wanted + "' is neither even nor odd");
        };
    }
}
