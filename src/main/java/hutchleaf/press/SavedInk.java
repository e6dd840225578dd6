package hutchleaf.press;

import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Drawings of a page that saves ink. A page asks for it with {@code data-ink="save"} on its root; a shape then gets what
 * its {@code data-save} says, attributes as in {@code fill:white;stroke:black;stroke-width:2}.
 */
final class SavedInk {
    private static final String SAID = "data-save";

    private SavedInk() {}

    static boolean isAskedFor(Document page) {
        return page.getDocumentElement().getAttribute("data-ink").equals("save");
    }

    /** Changes a drawing that stands in a page. */
    static void apply(Element svg) {
        for (Element shape : Dom.elements(svg, element -> element.hasAttribute(SAID))) {
            for (String said : shape.getAttribute(SAID).split(";", -1)) {
                String[] parts = said.split(":", 2);
                if (parts.length == 2) {
                    shape.setAttribute(parts[0].strip(), parts[1].strip());
                }
            }
        }
    }
}
