package hutchleaf.press;

import hutchleaf.page.Manuscript;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Reads XHTML with the JDK's parser, locked so that it never leaves the text it was given. */
final class XhtmlReader {
    private XhtmlReader() {}

    /** The document, in normal form C (the fonts have no marks to put together); empty after an error. */
    static Optional<Document> read(Manuscript manuscript, Problems problems) {
        try {
            DocumentBuilder builder = builder();
            builder.setErrorHandler(new Strict());
            String text = Normalizer.normalize(manuscript.xhtml(), Normalizer.Form.NFC);
            return Optional.of(builder.parse(new InputSource(new StringReader(text))));
        } catch (SAXParseException e) {
            int line = Math.max(0, e.getLineNumber());
            problems.add(
                    new Place(manuscript.madeBy(), line),
                    "the page is not XHTML: " + e.getMessage(),
                    "close every tag and write no DOCTYPE");
            return Optional.empty();
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("the JDK's XML parser failed", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A drawing's document; {@link SvgCheck} has found nothing wrong with it. */
    static Document figure(byte[] svg) {
        try {
            return builder().parse(new ByteArrayInputStream(svg));
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("a drawing that was read before", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DocumentBuilder builder() throws ParserConfigurationException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setXIncludeAware(false);
        factory.setExpandEntityReferences(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
        factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        return factory.newDocumentBuilder();
    }

    /** Stops at the first error; the JDK's own handler prints to the console. */
    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(@Nullable SAXParseException exception) {}

        @Override
        public void error(SAXParseException exception) throws SAXException {
            throw exception;
        }

        @Override
        public void fatalError(SAXParseException exception) throws SAXException {
            throw exception;
        }
    }
}
