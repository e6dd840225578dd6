package hutchleaf.press;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import org.w3c.dom.Document;

/** Sets the layout engine up, locked so that it can ask for nothing but figures of the content tree. */
final class Engine {
    private static final String SCHEME = "hutch";

    private Engine() {}

    /** The document laid out, ready to be measured and written; the caller closes it. */
    static PdfBoxRenderer layOut(Document document, Typefaces typefaces, Drawings drawings) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(document, SCHEME + ":page");
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Hutchleaf");
        builder.useSVGDrawer(drawings);
        builder.useUriResolver((base, uri) -> allowed(uri) ? uri : null);
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((uri, type) -> allowed(uri), when);
        }
        builder.useProtocolsStreamImplementation(
                uri -> new Stub(drawings.stub(uri.substring(uri.indexOf(':') + 1))), SCHEME);
        PdfBoxRenderer renderer = builder.buildPdfRenderer();
        typefaces.register(renderer.getFontResolver(), renderer.getPdfDocument());
        renderer.layout();
        return renderer;
    }

    private static boolean allowed(String uri) {
        return LockCheck.figurePath(uri).isPresent() || uri.equals(SCHEME + ":page") || uri.startsWith("#");
    }

    /** What the engine reads in place of a figure: its size and name; {@link Drawings} draws the real one. */
    private record Stub(String svg) implements FSStream {
        @Override
        public InputStream getStream() {
            return new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
