package hutchleaf.press;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import hutchleaf.sheet.Length;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Element;

/** Where each element landed: its height and its page. */
final class Layout {
    private final IdentityHashMap<Element, Box> boxes = new IdentityHashMap<>();
    private final List<PageBox> pages;
    private final double dotsPerPoint;

    private Layout(PdfBoxRenderer renderer) {
        dotsPerPoint = renderer.getDotsPerPoint();
        pages = renderer.getRootBox().getLayer().getPages();
        collect(renderer.getRootBox());
    }

    static Layout of(PdfBoxRenderer renderer) {
        return new Layout(renderer);
    }

    private void collect(Box box) {
        if (box.getElement() != null) {
            boxes.putIfAbsent(box.getElement(), box);
        }
        for (int index = 0; index < box.getChildCount(); index++) {
            collect(box.getChild(index));
        }
    }

    /** The height of an element's first box; empty when it has none. */
    Optional<Length> height(Element element) {
        return Optional.ofNullable(boxes.get(element)).map(box -> new Length(box.getHeight() / dotsPerPoint));
    }

    /** The page an element starts on, from 1; empty when it has no box. */
    Optional<Integer> page(Element element) {
        return Optional.ofNullable(boxes.get(element)).map(box -> pageAt(box.getAbsY()));
    }

    private int pageAt(int y) {
        for (int index = 0; index < pages.size(); index++) {
            if (y < pages.get(index).getBottom()) {
                return index + 1;
            }
        }
        return pages.size();
    }

    /** The start page of everything with an id. */
    Map<String, Integer> pages() {
        Map<String, Integer> found = new HashMap<>();
        boxes.forEach((element, box) -> {
            if (element.hasAttribute("id")) {
                found.put(element.getAttribute("id"), pageAt(box.getAbsY()));
            }
        });
        return found;
    }
}
