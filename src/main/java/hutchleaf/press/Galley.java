package hutchleaf.press;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.InlineLayoutBox;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.render.displaylist.PagedBoxCollector;
import hutchleaf.sheet.Length;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Element;

/** A document laid out once: where its elements stand and how large they came out. Close it after use. */
final class Galley implements AutoCloseable {
    private final PdfBoxRenderer renderer;
    private final PDDocument pdf;
    private final Map<Element, Box> boxes = new HashMap<>();
    private final List<PageBox> pages;

    Galley(PdfBoxRenderer renderer) {
        this.renderer = renderer;
        this.pdf = renderer.getPdfDocument();
        renderer.layout();
        this.pages = renderer.getRootBox().getLayer().getPages();
        collect(renderer.getRootBox());
    }

    private void collect(Box box) {
        if (box.getElement() != null && !box.isAnonymous() && box.getPseudoElementOrClass() == null) {
            boxes.putIfAbsent(box.getElement(), box);
        }
        children(box).forEach(this::collect);
    }

    private static List<Box> children(Box box) {
        List<Box> all = new ArrayList<>(box.getChildren());
        if (box instanceof InlineLayoutBox inline) {
            for (Object child : inline.getInlineChildren()) {
                if (child instanceof Box inner) {
                    all.add(inner);
                }
            }
        }
        if (box instanceof LineBox line) {
            all.addAll(line.getNonFlowContent());
        }
        return all;
    }

    /** The laid-out height of an element, borders and padding included; empty when it has no box. */
    Optional<Length> height(Element element) {
        return Optional.ofNullable(boxes.get(element)).map(box -> length(box.getHeight()));
    }

    /** How far what an element holds sticks out of it on the right; zero when it does not. */
    Length overhang(Element element) {
        Box box = boxes.get(element);
        if (box == null) {
            return Length.ZERO;
        }
        int edge = box.getAbsX() + box.getWidth();
        return length(Math.max(0, rightEdge(box, edge) - edge));
    }

    private static int rightEdge(Box box, int soFar) {
        int edge = soFar;
        for (Box child : children(box)) {
            // A line is as wide as its block; what stands on it may be wider.
            if (!(child instanceof LineBox)) {
                int width = child instanceof InlineLayoutBox inline ? inline.getInlineWidth() : child.getWidth();
                edge = Math.max(edge, child.getAbsX() + width);
            }
            edge = rightEdge(child, edge);
        }
        return edge;
    }

    /** The 1-based page on which an element's content starts; empty when it has no box. */
    OptionalInt page(Element element) {
        Box box = boxes.get(element);
        if (box == null) {
            return OptionalInt.empty();
        }
        // A block that is pushed to the next page keeps its own top on the page before; its first line does not.
        int top = PagedBoxCollector.findContentStartY(box);
        for (int i = 0; i < pages.size(); i++) {
            if (top < pages.get(i).getBottom()) {
                return OptionalInt.of(i + 1);
            }
        }
        return OptionalInt.of(pages.size());
    }

    /** Paints the pages; the result lives as long as this galley. */
    PDDocument paint() {
        try {
            return renderer.createPDFKeepOpen();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Length length(int dots) {
        return new Length(dots / renderer.getDotsPerPoint());
    }

    @Override
    public void close() {
        renderer.close();
        try {
            pdf.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
