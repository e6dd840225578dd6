package hutchleaf.press;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.view.ViewBox;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Draws SVG as vectors. Each drawing is parsed once and kept. Text in drawings is not drawn. */
final class Drawings implements SVGDrawer {
    private static final String FILE = "data-figure";
    private static final URI NOWHERE = URI.create("hutch:figures/");

    private final Figures figures;
    private final Map<String, SVGDocument> parsed = new HashMap<>();

    Drawings(Figures figures) {
        this.figures = figures;
    }

    /** A drawing of the right shape that names the figure to draw in its place. */
    String stub(String path) {
        SVGDocument drawing = figure(path);
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" %s=\"%s\" width=\"%s\" height=\"%s\"/>",
                FILE,
                path,
                drawing.viewBox().width,
                drawing.viewBox().height);
    }

    private SVGDocument figure(String path) {
        return parsed.computeIfAbsent(
                path, key -> parse(figures.svg(key).orElseThrow(() -> new IllegalStateException("no figure " + key))));
    }

    private static SVGDocument parse(byte[] svg) {
        LoaderContext locked = LoaderContext.builder()
                .externalResourcePolicy(ResourcePolicy.DENY_ALL)
                .build();
        return Objects.requireNonNull(
                new SVGLoader().load(new ByteArrayInputStream(svg), NOWHERE, locked), "a drawing cannot be read");
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg,
            @Nullable Box box,
            @Nullable CssContext context,
            double cssWidth,
            double cssHeight,
            double dotsPerPixel) {
        SVGDocument drawing;
        double ownWidth;
        double ownHeight;
        if (svg.hasAttribute(FILE)) {
            drawing = figure(svg.getAttribute(FILE));
            ownWidth = drawing.viewBox().width * dotsPerPixel;
            ownHeight = drawing.viewBox().height * dotsPerPixel;
        } else {
            String text = SvgText.of(svg);
            drawing = parsed.computeIfAbsent(text, key -> parse(key.getBytes(StandardCharsets.UTF_8)));
            ownWidth = SvgText.pixels(svg.getAttribute("width")) * dotsPerPixel;
            ownHeight = SvgText.pixels(svg.getAttribute("height")) * dotsPerPixel;
        }
        double ratio = ownWidth / ownHeight;
        double width = cssWidth >= 0 ? cssWidth : cssHeight >= 0 ? cssHeight * ratio : ownWidth;
        double height = cssHeight >= 0 ? cssHeight : cssWidth >= 0 ? cssWidth / ratio : ownHeight;
        return new Image(drawing, width, height, dotsPerPixel);
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {}

    @Override
    public void addFontFile(File fontFile, String family, Integer weight, FontStyle style) {}

    @Override
    public void close() {}

    /** A drawing at its size on the page, in the engine's dots. */
    private record Image(SVGDocument drawing, double width, double height, double dotsPerPixel) implements SVGImage {
        @Override
        public int getIntrinsicWidth() {
            return (int) Math.round(width);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.round(height);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            float wide = (float) (width / dotsPerPixel);
            float high = (float) (height / dotsPerPixel);
            device.drawWithGraphics((float) x, (float) y, (float) width, (float) height, graphics -> {
                Graphics2D copy = (Graphics2D) graphics.create();
                copy.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
                drawing.render((java.awt.Component) null, copy, new ViewBox(0, 0, wide, high));
                copy.dispose();
            });
        }
    }
}
