package hutchleaf.press;

import java.util.List;
import java.util.Optional;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Makes each element with {@code data-start} start on an even or an odd page, by the filler page just before it. */
final class Starts {
    private final List<Element> elements;

    Starts(Document document) {
        elements = Dom.elements(document, element -> element.hasAttribute("data-start"));
    }

    /**
     * Switches on the filler before the first element that starts on the wrong side.
     *
     * @return whether anything changed, so that the document has to be laid out again
     */
    boolean turn(Layout layout) {
        for (Element element : elements) {
            boolean even = element.getAttribute("data-start").equals("even");
            boolean wrong =
                    layout.page(element).filter(page -> (page % 2 == 0) != even).isPresent();
            Optional<Element> filler = Dom.before(element)
                    .filter(before -> Dom.hasClass(before, "filler") && !Dom.hasClass(before, "filler-on"));
            if (wrong && filler.isPresent()) {
                Dom.addClass(filler.get(), "filler-on");
                return true;
            }
        }
        return false;
    }
}
