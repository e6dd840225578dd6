package hutchleaf.press;

import hutchleaf.sheet.Box;
import hutchleaf.sheet.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Reads what is left of a page once it is cut: {@code data-trim}, four numbers in millimetres. */
final class Trims {
    private Trims() {}

    /** By 1-based page. */
    static Map<Integer, Box> of(Document document, Galley galley) {
        Map<Integer, Box> trims = new TreeMap<>();
        for (Element element : Dom.elements(document, each -> each.hasAttribute("data-trim"))) {
            galley.page(element).ifPresent(page -> trims.put(page, box(element.getAttribute("data-trim"))));
        }
        return trims;
    }

    private static Box box(String text) {
        List<Length> sides = Arrays.stream(text.strip().split(" +", -1))
                .map(side -> Length.mm(Double.parseDouble(side)))
                .toList();
        if (sides.size() != 4) {
            throw new IllegalArgumentException("data-trim='" + text + "' is not left, top, width and height in mm");
        }
        return new Box(sides.get(0), sides.get(1), sides.get(2), sides.get(3));
    }
}
