package hutchleaf.content;

import hutchleaf.model.Drawing;
import hutchleaf.model.Drawing.Label;
import hutchleaf.model.Level;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads what a figure says of itself: its box, how narrow it may be printed ({@code data-min-width="60mm"}), and the parts
 * it can point to: {@code <circle id="at-ear" cx="10" cy="20" data-level="primary"><title>ear</title></circle>}. What else
 * stands in it is checked before it is printed.
 */
final class DrawingReader {
    private static final Pattern BOX = Pattern.compile("0\\s+0\\s+(\\d+(?:\\.\\d+)?)\\s+(\\d+(?:\\.\\d+)?)");
    private static final Pattern MILLIMETRES = Pattern.compile("(\\d+(?:\\.\\d+)?)mm");
    private static final String AT = "at-";

    private final Place file;
    private final String path;
    private final Problems problems;
    private final List<Label> labels = new ArrayList<>();
    private double width;
    private double height;
    private double smallest;

    private DrawingReader(Place file, String path, Problems problems) {
        this.file = file;
        this.path = path;
        this.problems = problems;
    }

    static Map<String, Drawing> read(ContentTree tree, Problems problems) {
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        for (String path : tree.files(".svg")) {
            new DrawingReader(tree.place(path), path, problems)
                    .read(tree.text(path).orElse(""))
                    .ifPresent(drawing -> drawings.put(path, drawing));
        }
        return drawings;
    }

    private Optional<Drawing> read(String svg) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(svg));
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamReader.START_ELEMENT) {
                    element(reader);
                }
            }
        } catch (XMLStreamException e) {
            problems.add(
                    file.atLine(Math.max(
                            1, e.getLocation() == null ? 1 : e.getLocation().getLineNumber())),
                    "the drawing is not XML",
                    "save it again as plain SVG");
            return Optional.empty();
        }
        if (height <= 0) {
            problems.add(
                    file.atLine(1),
                    "the drawing has no viewBox with a width and a height",
                    "add viewBox=\"0 0 width height\" to <svg>");
            return Optional.empty();
        }
        return Optional.of(new Drawing(path, width, height, smallest, labels));
    }

    private void element(XMLStreamReader reader) throws XMLStreamException {
        if (reader.getLocalName().equals("svg") && height == 0) {
            root(reader);
        } else if (text(reader, "id").startsWith(AT)) {
            label(reader);
        }
    }

    private void root(XMLStreamReader reader) {
        Matcher box = BOX.matcher(text(reader, "viewBox").strip());
        if (box.matches()) {
            width = Double.parseDouble(box.group(1));
            height = width > 0 ? Double.parseDouble(box.group(2)) : 0;
        }
        String least = text(reader, "data-min-width");
        Matcher millimetres = MILLIMETRES.matcher(least);
        if (millimetres.matches()) {
            smallest = Double.parseDouble(millimetres.group(1));
        } else if (!least.isEmpty()) {
            problems.add(place(reader), "data-min-width is '" + least + "'", "write it as 60mm");
        }
    }

    private void label(XMLStreamReader reader) throws XMLStreamException {
        Place at = place(reader);
        String id = text(reader, "id");
        String level = text(reader, "data-level");
        Optional<Double> x = number(reader, "cx");
        Optional<Double> y = number(reader, "cy");
        String word = title(reader);
        if (word.isEmpty()) {
            problems.add(at, "the part '" + id + "' has no word", "put it into a <title> inside");
        } else if (x.isEmpty() || y.isEmpty()) {
            problems.add(at, "the part '" + id + "' has no place", "give it cx and cy");
        } else if (Level.of(level).isEmpty()) {
            problems.add(
                    at,
                    "the part '" + id + "' has the data-level '" + level + "'",
                    NearMiss.mend(level, Level.words()));
        } else {
            labels.add(new Label(word, Level.of(level).get(), x.get(), y.get(), at));
        }
    }

    /** The text of the title inside the element that was just opened. */
    private static String title(XMLStreamReader reader) throws XMLStreamException {
        int depth = 1;
        String title = "";
        while (depth > 0) {
            int event = reader.next();
            if (event == XMLStreamReader.START_ELEMENT && reader.getLocalName().equals("title")) {
                title = new Quotes().curl(reader.getElementText().strip());
            } else if (event == XMLStreamReader.START_ELEMENT) {
                depth++;
            } else if (event == XMLStreamReader.END_ELEMENT) {
                depth--;
            }
        }
        return title;
    }

    private Place place(XMLStreamReader reader) {
        return file.atLine(reader.getLocation().getLineNumber());
    }

    private static String text(XMLStreamReader reader, String attribute) {
        String value = reader.getAttributeValue(null, attribute);
        return value == null ? "" : value;
    }

    private static Optional<Double> number(XMLStreamReader reader, String attribute) {
        String text = text(reader, attribute);
        return text.matches("-?\\d{1,6}(\\.\\d{1,6})?") ? Optional.of(Double.parseDouble(text)) : Optional.empty();
    }
}
