package hutchleaf.press;

import java.nio.charset.StandardCharsets;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Drawings of a page that saves ink. A page asks for it with {@code data-ink="save"} on its root; a shape then gets what
 * its {@code data-save} says: attributes as in {@code fill:white;stroke:black;stroke-width:2}, or {@code hatch} for
 * lines in place of its black.
 */
final class SavedInk {
    private static final String SAID = "data-save";
    private static final String HATCH = "hatch";

    private SavedInk() {}

    static boolean isAskedFor(Document page) {
        return page.getDocumentElement().getAttribute("data-ink").equals("save");
    }

    /** A figure's file as it is drawn where ink is saved. */
    static byte[] figure(byte[] svg) {
        Element root = XhtmlReader.figure(svg).getDocumentElement();
        apply(root);
        return SvgText.of(root).getBytes(StandardCharsets.UTF_8);
    }

    /** Changes a drawing. */
    static void apply(Element svg) {
        for (Element shape : Dom.elements(svg, element -> element.hasAttribute(SAID))) {
            String said = shape.getAttribute(SAID);
            shape.removeAttribute(SAID);
            if (said.strip().equals(HATCH)) {
                Hatch.apply(svg, shape);
            } else {
                attributes(shape, said);
            }
        }
    }

    private static void attributes(Element shape, String said) {
        for (String attribute : said.split(";", -1)) {
            String[] parts = attribute.split(":", 2);
            if (parts.length == 2) {
                shape.setAttribute(parts[0].strip(), parts[1].strip());
            }
        }
    }
}
