package hutchleaf.press;

import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Inline drawings: written back to text for the drawing library, and named for those who cannot see them. */
final class SvgText {
    private SvgText() {}

    static boolean isOutermost(Element element) {
        return Dom.isInline(element)
                && !(element.getParentNode() instanceof Element parent && Dom.isInsideInline(parent));
    }

    /** Whether a drawing holds only what {@link SvgRules} allow. */
    static boolean isPlain(Element svg) {
        return Dom.elements(svg, SvgText::isFaulty).isEmpty();
    }

    private static boolean isFaulty(Element element) {
        return SvgRules.element(Dom.name(element)).isPresent()
                || Dom.attributes(element).stream()
                        .anyMatch(attribute -> SvgRules.attribute(attribute.getName(), attribute.getValue())
                                .isPresent());
    }

    /** The drawing as an SVG document of its own. A sized root is drawn to its box, so its own size is left out. */
    static String of(Element svg) {
        StringBuilder out = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\"");
        boolean scales = svg.hasAttribute("viewBox");
        for (Attr attribute : Dom.attributes(svg)) {
            boolean size =
                    attribute.getName().equals("width") || attribute.getName().equals("height");
            if (!(scales && size)) {
                write(attribute, out);
            }
        }
        out.append('>');
        children(svg, out);
        return out.append("</svg>").toString();
    }

    /**
     * Puts a drawing's name where the engine looks for it, in {@code alt}: its own alt, its aria-label or its title. A
     * drawing without any, or one marked as decoration, gets an empty one and becomes an artifact.
     */
    static void nameFor(Element svg) {
        if (svg.getAttribute("aria-hidden").equals("true")
                || svg.getAttribute("role").equals("presentation")
                || svg.getAttribute("role").equals("none")) {
            svg.setAttribute("alt", "");
        } else if (!svg.hasAttribute("alt")) {
            svg.setAttribute("alt", svg.hasAttribute("aria-label") ? svg.getAttribute("aria-label") : title(svg));
        }
    }

    private static String title(Element svg) {
        for (Node child = svg.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && Dom.name(element).equals("title")) {
                return element.getTextContent().strip();
            }
        }
        return "";
    }

    private static void children(Element element, StringBuilder out) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                out.append('<').append(Dom.name(inner));
                Dom.attributes(inner).forEach(attribute -> write(attribute, out));
                out.append('>');
                children(inner, out);
                out.append("</").append(Dom.name(inner)).append('>');
            } else if (child instanceof Text text) {
                out.append(Xml.escape(text.getData()));
            }
        }
    }

    private static void write(Attr attribute, StringBuilder out) {
        String name = attribute.getName();
        if (name.startsWith("xmlns")) {
            return;
        }
        // The prefix of xlink:href is left out with its declaration; a bare href means the same (SVG 2, 16.1.4).
        String local = name.substring(name.indexOf(':') + 1);
        out.append(' ')
                .append(local)
                .append("=\"")
                .append(Xml.escape(attribute.getValue()))
                .append('"');
    }
}
