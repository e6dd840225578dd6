package hutchleaf.press;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Hides the parts of a document that fit already while the rest is tried at its next size, so that each trial lays out
 * only what is still open. A part is a child of the body; nothing in one changes the height of another.
 */
final class SetAside {
    private static final String HIDDEN = "set-aside";

    private final List<Element> parts;
    private boolean hiding;

    SetAside(Document document) {
        parts = Dom.elements(
                document,
                element -> element.getParentNode() instanceof Element body
                        && Dom.name(body).equals("body"));
        Dom.elements(document, element -> Dom.name(element).equals("head")).stream()
                .findFirst()
                .ifPresent(SetAside::addStyle);
    }

    private static void addStyle(Element head) {
        Element style = head.getOwnerDocument().createElementNS(head.getNamespaceURI(), "style");
        style.setTextContent("." + HIDDEN + " { display: none !important; }");
        head.appendChild(style);
    }

    /** Hides every part that holds none of the elements. */
    void allBut(List<Element> open) {
        Set<Node> needed = new HashSet<>();
        for (Element element : open) {
            for (Node up = element; up != null; up = up.getParentNode()) {
                needed.add(up);
            }
        }
        for (Element part : parts) {
            Dom.removeClass(part, HIDDEN);
            if (!needed.contains(part)) {
                Dom.addClass(part, HIDDEN);
            }
        }
        hiding = true;
    }

    /**
     * Shows everything again.
     *
     * @return whether anything was hidden, so that the document has to be laid out again
     */
    boolean nothing() {
        boolean hidden = hiding;
        parts.forEach(part -> Dom.removeClass(part, HIDDEN));
        hiding = false;
        return hidden;
    }
}
