package hutchleaf.press;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.ReplacedElement;
import com.openhtmltopdf.extend.ReplacedElementFactory;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.layout.LayoutContext;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.simple.extend.XhtmlNamespaceHandler;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Sets documents in type with the layout engine, which it keeps from fetching anything at all. */
final class Typesetter {
    static {
        // The engine's log is one static of its own, and speaks on the console unless it is replaced.
        XRLog.setLoggerImpl(new Silence());
    }

    private final Typefaces typefaces;
    private final FSCacheEx<String, FSCacheValue> metrics = new FSDefaultCacheStore();

    /**
     * @param font a TrueType font for letters that the others lack
     */
    Typesetter(Optional<Path> font) {
        this.typefaces = new Typefaces(font);
    }

    Typefaces typefaces() {
        return typefaces;
    }

    /**
     * Lays a document out.
     *
     * @param complaints told what the engine could not read in the style
     */
    Galley set(Document document, Map<Element, Drawing> drawings, Consumer<String> complaints) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(document, null);
        builder.usePdfUaAccessibility(true);
        builder.withProducer(Finish.PRODUCER);
        builder.useCacheStore(PdfRendererBuilder.CacheStore.PDF_FONT_METRICS, metrics);
        builder.useNamespaceHandler(new Sizes());
        builder.useUnicodeLineBreaker(new LineBreaks());
        // The page has been checked already; these are the second lock.
        builder.useUriResolver((base, uri) -> null);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.withDiagnosticConsumer(diagnostic -> pass(diagnostic, complaints));
        PdfBoxRenderer renderer = builder.buildPdfRenderer();
        typefaces.register(renderer.getFontResolver(), renderer.getPdfDocument());
        renderer.getSharedContext().setReplacedElementFactory(new Placing(drawings, new HashMap<>()));
        return new Galley(renderer);
    }

    private static void pass(Diagnostic diagnostic, Consumer<String> complaints) {
        boolean style = diagnostic.getLogMessageId().getWhere().equals(XRLog.CSS_PARSE);
        if (style && diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
            complaints.accept(diagnostic.getFormattedMessage());
        }
    }

    /** Puts each img and inline svg in its box. */
    private record Placing(Map<Element, Drawing> drawings, Map<DrawnElement.Stamp, DrawnElement.Stamp> stamps)
            implements ReplacedElementFactory {
        @Override
        public @Nullable ReplacedElement createReplacedElement(
                LayoutContext c, BlockBox box, UserAgentCallback uac, int cssWidth, int cssHeight) {
            Drawing drawing = drawings.get(box.getElement());
            return drawing == null ? null : new DrawnElement(drawing, stamps, c.getDotsPerPixel(), cssWidth, cssHeight);
        }

        @Override
        public boolean isReplacedElement(@Nullable Element e) {
            return e != null && drawings.containsKey(e);
        }
    }

    /** An inline svg without a size gets it from its style; the engine would make it 400 pixels square. */
    private static final class Sizes extends XhtmlNamespaceHandler {
        @Override
        public String getNonCssStyling(Element e) {
            boolean unsized = Dom.isInline(e) && !e.hasAttribute("width") && !e.hasAttribute("height");
            return unsized ? "" : Objects.requireNonNullElse(super.getNonCssStyling(e), "");
        }
    }

    private static final class Silence implements XRLogger {
        @Override
        public void log(String where, Level level, String msg) {}

        @Override
        public void log(String where, Level level, String msg, Throwable th) {}

        @Override
        public void setLevel(String logger, Level level) {}

        @Override
        public boolean isLogLevelEnabled(Diagnostic diagnostic) {
            return false;
        }
    }
}
