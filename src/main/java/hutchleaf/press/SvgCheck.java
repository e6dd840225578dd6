package hutchleaf.press;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;
import org.xml.sax.helpers.LocatorImpl;

/** Checks that a drawing is shapes and nothing else: no script, no style sheet, no reach outside itself. */
public final class SvgCheck {
    private SvgCheck() {}

    /**
     * Adds an error for each part of a drawing that may not be there, at its line (where the tag ends).
     *
     * @param path from the content root, for example {@code figures/eye.svg}
     */
    public static void check(String path, byte[] svg, Problems problems) {
        Place file = Place.whole("content/" + path);
        Reader reader = new Reader(file, problems);
        try {
            SAXParser parser = factory().newSAXParser();
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", reader);
            parser.parse(new InputSource(new ByteArrayInputStream(svg)), reader);
        } catch (DoctypeMet e) {
            // Reported where it was met; nothing after it was read.
        } catch (SAXParseException e) {
            int line = Math.max(0, e.getLineNumber());
            problems.add(file.atLine(line), "the drawing is not XML: " + e.getMessage(), "save it again as plain SVG");
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("the JDK's XML parser failed", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SAXParserFactory factory() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory;
    }

    /** Ends the reading at a DOCTYPE, before any entity in it can grow. */
    private static final class DoctypeMet extends SAXException {}

    private static final class Reader extends DefaultHandler2 {
        private final Place file;
        private final Problems problems;
        private org.xml.sax.Locator at = new LocatorImpl();
        private boolean rootSeen;

        Reader(Place file, Problems problems) {
            this.file = file;
            this.problems = problems;
        }

        @Override
        public void setDocumentLocator(org.xml.sax.Locator locator) {
            at = locator;
        }

        @Override
        public void startDTD(String name, @Nullable String publicId, @Nullable String systemId) throws SAXException {
            add(new SvgRules.Fault("a drawing must not hold a DOCTYPE", "delete that line"));
            throw new DoctypeMet();
        }

        @Override
        public void processingInstruction(String target, String data) {
            add(new SvgRules.Fault("a drawing must not hold <?" + target + "?>", "delete that line"));
        }

        @Override
        public void startElement(String uri, String localName, String qName, Attributes attributes) {
            if (!rootSeen) {
                root(localName, attributes);
            }
            rootSeen = true;
            SvgRules.element(localName).ifPresent(this::add);
            for (int i = 0; i < attributes.getLength(); i++) {
                SvgRules.attribute(attributes.getQName(i), attributes.getValue(i))
                        .ifPresent(this::add);
            }
        }

        private void root(String name, Attributes attributes) {
            if (!name.equals("svg")) {
                add(new SvgRules.Fault("a drawing must start with <svg>, not <" + name + ">", "save it as plain SVG"));
            } else if (attributes.getValue("viewBox") == null) {
                add(new SvgRules.Fault("a drawing needs a viewBox to be scaled by", "give <svg> a viewBox"));
            }
        }

        // The JDK's default prints to the console.
        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }

        private void add(SvgRules.Fault fault) {
            problems.add(file.atLine(Math.max(0, at.getLineNumber())), fault.what(), fault.mend());
        }
    }
}
