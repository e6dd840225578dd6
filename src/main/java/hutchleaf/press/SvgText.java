package hutchleaf.press;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Inline SVG back to text, for the drawer; same element, same text. */
final class SvgText {
    private static final Pattern LENGTH = Pattern.compile("(\\d*\\.?\\d+)(mm|pt|px|)");
    private static final double PIXELS_PER_MM = 96 / 25.4;
    private static final double PIXELS_PER_POINT = 96.0 / 72;

    private SvgText() {}

    static String of(Element svg) {
        StringBuilder text = new StringBuilder();
        write(svg, text, true);
        return text.toString();
    }

    private static void write(Element element, StringBuilder text, boolean root) {
        text.append('<').append(Dom.name(element));
        if (root) {
            text.append(" xmlns=\"http://www.w3.org/2000/svg\"");
        }
        for (Attr attribute : Dom.attributes(element)) {
            if (!attribute.getName().startsWith("xmlns") && !(root && isSize(attribute.getName()))) {
                text.append(' ')
                        .append(attribute.getName())
                        .append("=\"")
                        .append(attribute
                                .getValue()
                                .replace("&", "&amp;")
                                .replace("<", "&lt;")
                                .replace("\"", "&quot;"))
                        .append('"');
            }
        }
        text.append('>');
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inside) {
                write(inside, text, false);
            }
        }
        text.append("</").append(Dom.name(element)).append('>');
    }

    private static boolean isSize(String name) {
        return name.equals("width") || name.equals("height");
    }

    /** A length of SVG in CSS pixels (1/96 inch). */
    static double pixels(String length) {
        Matcher form = LENGTH.matcher(length.strip());
        if (!form.matches()) {
            throw new IllegalStateException("an inline drawing needs width and height in mm, not '" + length + "'");
        }
        double number = Double.parseDouble(form.group(1));
        return switch (form.group(2)) {
            case "mm" -> number * PIXELS_PER_MM;
            case "pt" -> number * PIXELS_PER_POINT;
            default -> number;
        };
    }
}
