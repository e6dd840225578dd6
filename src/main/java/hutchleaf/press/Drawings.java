package hutchleaf.press;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Finds, checks and parses the drawings of a page; figures are parsed once per press. */
final class Drawings {
    /** Behind the path of a figure that is drawn with less ink. */
    private static final String SAVING = " saving";

    private final Figures figures;
    private final SVGLoader loader = new SVGLoader();
    private final LoaderContext context = LoaderContext.builder()
            .externalResourcePolicy(ResourcePolicy.DENY_ALL)
            .build();
    private final Map<String, Drawing> parsed = new HashMap<>();

    Drawings(Figures figures) {
        this.figures = figures;
    }

    /** The drawing that each img and each inline svg shows; adds an error for each that cannot be had. */
    Map<Element, Drawing> of(Document document, Place fallback, Problems problems) {
        Map<Element, Drawing> found = new HashMap<>();
        Map<String, Optional<Drawing>> inline = new HashMap<>();
        boolean saving = SavedInk.isAskedFor(document);
        for (Element element : Dom.elements(document, Drawings::isDrawn)) {
            Place place = Dom.place(element, fallback);
            Optional<Drawing> drawing;
            if (element.getTagName().equals("img")) {
                drawing = LockCheck.figurePath(element.getAttribute("src"))
                        .flatMap(path -> figure(path, saving, place, problems));
            } else if (!SvgText.isPlain(element)) {
                // Reported already; a hostile drawing does not come near the drawing library.
                continue;
            } else {
                if (saving) {
                    SavedInk.apply(element);
                }
                drawing = inline.computeIfAbsent(
                        SvgText.of(element), text -> load(text.getBytes(StandardCharsets.UTF_8), place, problems));
                SvgText.nameFor(element);
            }
            drawing.ifPresent(known -> found.put(element, known));
        }
        return found;
    }

    private static boolean isDrawn(Element element) {
        return element.getTagName().equals("img") || SvgText.isOutermost(element);
    }

    /** The figure with a path from the content root. */
    Optional<Drawing> named(String path, Place place, Problems problems) {
        return figure(path, false, place, problems);
    }

    private Optional<Drawing> figure(String path, boolean saving, Place place, Problems problems) {
        String key = saving ? path + SAVING : path;
        Drawing known = parsed.get(key);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<byte[]> svg = figures.svg(path);
        if (svg.isEmpty()) {
            problems.add(place, "there is no figure 'hutch:" + path + "'", "put it into content/figures");
            return Optional.empty();
        }
        Problems faults = new Problems();
        SvgCheck.check(path, svg.get(), faults);
        problems.addAll(faults);
        Optional<Drawing> drawing = faults.isEmpty()
                ? load(saving ? SavedInk.figure(svg.get()) : svg.get(), place, problems)
                : Optional.empty();
        drawing.ifPresent(made -> parsed.put(key, made));
        return drawing;
    }

    private Optional<Drawing> load(byte[] svg, Place place, Problems problems) {
        SVGDocument document = loader.load(new ByteArrayInputStream(svg), null, context);
        if (document == null) {
            problems.add(place, "the drawing cannot be drawn", "save it again as plain SVG");
            return Optional.empty();
        }
        return Optional.of(Drawing.of(document));
    }
}
