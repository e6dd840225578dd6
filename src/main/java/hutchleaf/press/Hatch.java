package hutchleaf.press;

import java.util.Locale;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Slanting lines in place of a drawing's black: dark still, for about a fifth of the ink. */
final class Hatch {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Pattern SPACE = Pattern.compile("[\\s,]+");

    /** Of a line where the drawing is printed at its least width: 0.9 pt in mm, which lives through two copies. */
    private static final double LINE = 0.9 * 25.4 / 72;

    /** From line to line, in widths of one. */
    private static final double PITCH = 4.8;

    /** Millimetres; a drawing that names no least width prints no narrower. */
    private static final double LEAST_WIDTH = 60;

    private Hatch() {}

    /** Makes a shape white and lays lines across it, cut to its outline. */
    static void apply(Element svg, Element shape) {
        Document document = svg.getOwnerDocument();
        Node parent = shape.getParentNode();
        String id = "hatch-"
                + Dom.elements(svg, element -> Dom.name(element).equals("clipPath"))
                        .size();
        Element clip = document.createElementNS(SVG, "clipPath");
        clip.setAttribute("id", id);
        clip.appendChild(shape.cloneNode(true));
        parent.insertBefore(clip, shape);
        shape.setAttribute("fill", "white");
        Element lines = document.createElementNS(SVG, "path");
        String[] box = SPACE.split(svg.getAttribute("viewBox").strip(), -1);
        double width = Double.parseDouble(box[2]);
        double line = LINE * width / leastWidth(svg);
        lines.setAttribute("d", lines(width, Double.parseDouble(box[3]), line * PITCH));
        lines.setAttribute("fill", "none");
        lines.setAttribute("stroke", "black");
        lines.setAttribute("stroke-width", number(line));
        lines.setAttribute("clip-path", "url(#" + id + ")");
        parent.insertBefore(lines, shape.getNextSibling());
    }

    private static double leastWidth(Element svg) {
        String written = svg.getAttribute("data-min-width");
        return written.endsWith("mm") ? Double.parseDouble(written.substring(0, written.length() - 2)) : LEAST_WIDTH;
    }

    /** Lines at 45° over a whole view box that begins at nought. */
    private static String lines(double width, double height, double pitch) {
        StringBuilder lines = new StringBuilder();
        double step = pitch * Math.sqrt(2);
        for (double x = step / 2 - height; x < width; x += step) {
            lines.append('M')
                    .append(number(x))
                    .append(' ')
                    .append(number(height))
                    .append('l')
                    .append(number(height))
                    .append(' ')
                    .append(number(-height));
        }
        return lines.toString();
    }

    private static String number(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }
}
