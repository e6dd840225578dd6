package hutchleaf.press;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;

/**
 * A font as a part embeds it. The press numbers glyphs as the whole font does, whatever its subset (ISO 32000-1,
 * 9.7.4.2), so a larger subset of the same font can stand for a smaller one.
 *
 * @param piece its number within the part
 * @param name without the letters that tell subsets apart
 * @param widths of the glyphs that are embedded, by their numbers, in thousandths of the type size
 */
record Face(int piece, String name, Map<Integer, Double> widths) {
    Face {
        widths = Map.copyOf(widths);
    }

    private static final int TAG = "ABCDEF+".length();
    /** ISO 32000-1, table 117: DW. */
    private static final float STANDARD_WIDTH = 1000;

    /** Reads a font's dictionary; empty when it is not such a subset. */
    static Optional<Face> read(int piece, COSDictionary font) throws IOException {
        String name = font.getNameAsString(COSName.BASE_FONT, "");
        COSArray descendants = font.getCOSArray(COSName.DESCENDANT_FONTS);
        if (!name.matches("[A-Z]{6}\\+.+")
                || !font.getNameAsString(COSName.ENCODING, "").equals("Identity-H")
                || descendants == null
                || !(descendants.getObject(0) instanceof COSDictionary glyphs)
                || !(glyphs.getDictionaryObject(COSName.CID_TO_GID_MAP) instanceof COSStream map)) {
            return Optional.empty();
        }
        Map<Integer, Double> listed = widths(glyphs);
        double standard = glyphs.getFloat(COSName.DW, STANDARD_WIDTH);
        Map<Integer, Double> widths = new HashMap<>();
        for (int glyph : embedded(map)) {
            widths.put(glyph, listed.getOrDefault(glyph, standard));
        }
        return Optional.of(new Face(piece, name.substring(TAG), widths));
    }

    private static List<Integer> embedded(COSStream map) throws IOException {
        byte[] bytes;
        try (InputStream in = map.createInputStream()) {
            bytes = in.readAllBytes();
        }
        List<Integer> embedded = new ArrayList<>();
        for (int i = 0; i + 1 < bytes.length; i += 2) {
            // The glyph for "missing" is number nought in every subset.
            if (i == 0 || bytes[i] != 0 || bytes[i + 1] != 0) {
                embedded.add(i / 2);
            }
        }
        return embedded;
    }

    /** Reads W, which has two forms (ISO 32000-1, 9.7.4.3). */
    private static Map<Integer, Double> widths(COSDictionary glyphs) {
        Map<Integer, Double> widths = new HashMap<>();
        COSArray list = glyphs.getCOSArray(COSName.W);
        int at = 0;
        while (list != null && at + 1 < list.size()) {
            int from = list.getInt(at);
            if (list.getObject(at + 1) instanceof COSArray each) {
                for (int i = 0; i < each.size(); i++) {
                    widths.put(from + i, ((COSNumber) each.getObject(i)).floatValue() + 0.0);
                }
                at += 2;
            } else {
                for (int glyph = from; glyph <= list.getInt(at + 1); glyph++) {
                    widths.put(glyph, ((COSNumber) list.getObject(at + 2)).floatValue() + 0.0);
                }
                at += 3;
            }
        }
        return widths;
    }

    /** Whether it can stand for another: the same font with at least its glyphs, equally wide. */
    boolean covers(Face other) {
        return name.equals(other.name) && widths.entrySet().containsAll(other.widths.entrySet());
    }
}
