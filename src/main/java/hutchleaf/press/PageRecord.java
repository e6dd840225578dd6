package hutchleaf.press;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Reads what the pages of one file show: their words, and what is drawn apart from words. */
final class PageRecord {
    /**
     * What a page shows.
     *
     * @param words in the order in which they are painted, a space between one run and the next
     * @param drawn a digest of each operator outside text (ISO 32000-1, annex A) with what it works on, and of the size
     */
    record Page(String words, String drawn) {}

    private static final Set<String> MARKS = Set.of("BMC", "BDC", "EMC", "MP", "DP");
    private static final Set<String> SHOW = Set.of("Tj", "TJ", "'", "\"");
    private static final Map<String, COSName> KINDS = Map.of(
            "Do", COSName.XOBJECT,
            "gs", COSName.EXT_G_STATE,
            "sh", COSName.SHADING,
            "cs", COSName.COLORSPACE,
            "CS", COSName.COLORSPACE,
            "scn", COSName.PATTERN,
            "SCN", COSName.PATTERN);

    private final CosRecord objects = new CosRecord();

    Page of(PDPage page) throws IOException {
        Reading reading = new Reading(page.getResources());
        reading.note(page.getMediaBox().getCOSArray());
        reading.note(" rotated " + page.getRotation());
        PDFStreamParser parser = new PDFStreamParser(page);
        for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
            if (token instanceof Operator operator) {
                reading.operator(operator);
            } else {
                reading.operands.add((COSBase) token);
            }
        }
        return new Page(reading.words.toString(), HexFormat.of().formatHex(Digest.of(reading.drawn.toByteArray())));
    }

    private final class Reading {
        private final PDResources resources;
        private final List<COSBase> operands = new ArrayList<>();
        private final StringBuilder words = new StringBuilder();
        private final ByteArrayOutputStream drawn = new ByteArrayOutputStream();
        private final Deque<Optional<PDFont>> fonts = new ArrayDeque<>(List.of(Optional.empty()));
        private boolean inText;

        Reading(PDResources resources) {
            this.resources = resources;
        }

        void operator(Operator operator) throws IOException {
            String name = operator.getName();
            switch (name) {
                case "BT" -> inText = true;
                case "ET" -> inText = false;
                case "q" -> fonts.push(fonts.peek());
                case "Q" -> fonts.pop();
                case "Tf" -> {
                    fonts.pop();
                    fonts.push(Optional.ofNullable(resources.getFont((COSName) operands.get(0))));
                }
                default -> {}
            }
            if (SHOW.contains(name)) {
                show(operands.get(operands.size() - 1));
            } else if (!inText && !name.equals("ET") && !name.equals("Tf") && !MARKS.contains(name)) {
                draw(operator);
            }
            operands.clear();
        }

        private void draw(Operator operator) throws IOException {
            COSName kind = KINDS.get(operator.getName());
            COSDictionary named = kind == null ? null : resources.getCOSObject().getCOSDictionary(kind);
            for (COSBase operand : operands) {
                COSBase meant =
                        named != null && operand instanceof COSName name ? named.getDictionaryObject(name) : operand;
                note(meant == null ? operand : meant);
            }
            note(" " + operator.getName() + "\n");
            if (operator.getImageData() != null) {
                note(operator.getImageParameters());
                drawn.writeBytes(operator.getImageData());
            }
        }

        void note(COSBase object) throws IOException {
            objects.write(object, drawn);
        }

        void note(String text) {
            Piece.ascii(drawn, text);
        }

        private void show(COSBase shown) throws IOException {
            if (shown instanceof COSString run) {
                show(run.getBytes());
            } else if (shown instanceof COSArray runs) {
                for (COSBase run : runs) {
                    if (run instanceof COSString string) {
                        show(string.getBytes());
                    }
                }
            }
            words.append(' ');
        }

        private void show(byte[] codes) throws IOException {
            PDFont font = fonts.element().orElseThrow(() -> new IOException("words before a font is chosen"));
            InputStream in = new ByteArrayInputStream(codes);
            while (in.available() > 0) {
                int code = font.readCode(in);
                String sign = font.toUnicode(code);
                words.append(sign == null ? "<" + code + ">" : sign);
            }
        }
    }
}
