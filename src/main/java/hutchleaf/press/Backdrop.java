package hutchleaf.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Drops the marks of backgrounds that draw nothing. The engine marks each box as a background with a note of its place,
 * and nine in ten draw nothing: a fifth to two fifths of a file, and hundreds of objects a page.
 */
final class Backdrop {
    /** Text is written as glyph numbers, in brackets that never hold a line's end, so it cannot spell such a line. */
    private static final Pattern EMPTY = Pattern.compile("(?m)^/Artifact /\\S+ BDC\\nEMC\\n");

    private static final Pattern MARK = Pattern.compile("(?m)^(?:/.* B[DM]C|EMC)\\n");

    private static final Pattern USED = Pattern.compile("/(\\S+) (?:BDC|DP)\\b");

    private Backdrop() {}

    /** Rewrites a page's content and drops the notes that it no longer uses. */
    static void drop(COSDictionary page) throws IOException {
        COSDictionary resources = page.getCOSDictionary(COSName.RESOURCES);
        COSDictionary notes = resources == null ? null : resources.getCOSDictionary(COSName.PROPERTIES);
        if (notes == null || !(page.getDictionaryObject(COSName.CONTENTS) instanceof COSStream old)) {
            return;
        }
        String content = read(old);
        String fewer = EMPTY.matcher(content).replaceAll("");
        if (fewer.length() < content.length()) {
            page.setItem(COSName.CONTENTS, write(fewer));
            Set<String> used =
                    USED.matcher(fewer).results().map(use -> use.group(1)).collect(Collectors.toSet());
            COSDictionary left = new COSDictionary();
            notes.forEach((name, note) -> {
                if (used.contains(name.getName())) {
                    left.setItem(name, note);
                }
            });
            resources.setItem(COSName.PROPERTIES, left);
        }
    }

    /** Takes all marks out of a page's content: much of it, and none of what is seen. */
    static void dropMarks(COSDictionary page) throws IOException {
        if (page.getDictionaryObject(COSName.CONTENTS) instanceof COSStream marked) {
            COSStream bare = new COSStream();
            try (OutputStream out = bare.createOutputStream()) {
                out.write(MARK.matcher(read(marked)).replaceAll("").getBytes(StandardCharsets.ISO_8859_1));
            }
            page.setItem(COSName.CONTENTS, bare);
        }
    }

    /** A content stream, a byte a sign. */
    static String read(COSStream stream) throws IOException {
        try (InputStream in = stream.createInputStream()) {
            return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }

    static COSStream write(String content) throws IOException {
        COSStream stream = new COSStream();
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        }
        return stream;
    }
}
