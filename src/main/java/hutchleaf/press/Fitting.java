package hutchleaf.press;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Length;
import java.util.List;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Makes each element with {@code data-fit} fit its height: it gets the first class of its list, loosest first, with
 * which it is no taller than {@code data-fit-height} millimetres. Below the last class it is an error that names it.
 */
final class Fitting {
    private final List<Part> parts;

    Fitting(Document document) {
        parts = Dom.elements(document, element -> element.hasAttribute("data-fit")).stream()
                .map(Part::new)
                .toList();
    }

    /**
     * Tightens every part that is too tall by one step.
     *
     * @return whether anything changed, so that the document has to be laid out again
     */
    boolean tighten(Layout layout, Place fallback, Problems problems) {
        boolean changed = false;
        for (Part part : parts) {
            changed |= part.tighten(layout, fallback, problems);
        }
        return changed;
    }

    private static final class Part {
        private final Element element;
        private final List<String> classes;
        private final Length limit;
        private int step;
        private boolean settled;

        Part(Element element) {
            this.element = element;
            this.classes = List.of(element.getAttribute("data-fit").strip().split("\\s+", -1));
            this.limit = Length.mm(
                    Double.parseDouble(element.getAttribute("data-fit-height").replace("mm", "")));
            Dom.addClass(element, classes.get(0));
        }

        boolean tighten(Layout layout, Place fallback, Problems problems) {
            Length over = layout.height(element).orElse(Length.ZERO).minus(limit);
            if (settled || over.compareTo(Length.TOLERANCE) <= 0) {
                return false;
            }
            if (step + 1 == classes.size()) {
                settled = true;
                problems.add(
                        Dom.place(element, fallback),
                        String.format(
                                Locale.ROOT,
                                "%s is %.1f mm too tall even at its smallest",
                                element.getAttribute("data-what"),
                                over.mm()),
                        "write it shorter");
                return false;
            }
            Dom.removeClass(element, classes.get(step));
            step++;
            Dom.addClass(element, classes.get(step));
            return true;
        }
    }
}
