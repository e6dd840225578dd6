package hutchleaf.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Drops what the engine notes of backgrounds. It marks each box as a background with a note of its place, and most of
 * those draw nothing: a third of a file, and hundreds of objects a page. What is drawn stays marked as an artifact.
 */
final class Backdrop {
    private static final COSName PROPERTIES = COSName.PROPERTIES;
    private static final COSName BACKGROUND = COSName.getPDFName("Background");

    /** Text is written as two-byte glyph numbers, so it cannot spell a mark at the start of a line. */
    private static final Pattern MARK = Pattern.compile("(?m)^/Artifact /(\\S+) BDC\\n(EMC\\n)?");

    private Backdrop() {}

    /** Rewrites a page's content and drops the notes from its resources. */
    static void drop(COSDictionary page) throws IOException {
        COSDictionary resources = page.getCOSDictionary(COSName.RESOURCES);
        COSDictionary notes = resources == null ? null : resources.getCOSDictionary(PROPERTIES);
        if (resources == null
                || notes == null
                || !(page.getDictionaryObject(COSName.CONTENTS) instanceof COSStream old)) {
            return;
        }
        Set<String> backgrounds = new HashSet<>();
        for (COSName name : Set.copyOf(notes.keySet())) {
            COSDictionary note = notes.getCOSDictionary(name);
            if (note != null && BACKGROUND.equals(note.getCOSName(COSName.TYPE))) {
                backgrounds.add(name.getName());
                notes.removeItem(name);
            }
        }
        if (notes.size() == 0) {
            resources.removeItem(PROPERTIES);
        }
        page.setItem(COSName.CONTENTS, content(old, backgrounds));
    }

    private static COSStream content(COSStream old, Set<String> backgrounds) throws IOException {
        String content;
        try (InputStream in = old.createInputStream()) {
            content = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        String fewer = MARK.matcher(content).replaceAll(mark -> {
            boolean background = backgrounds.contains(mark.group(1));
            String end = mark.group(2) == null ? "" : mark.group(2);
            String left = background && !end.isEmpty() ? "" : background ? "/Artifact BMC\n" : mark.group();
            return Matcher.quoteReplacement(left);
        });
        COSStream made = new COSStream();
        try (OutputStream out = made.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(fewer.getBytes(StandardCharsets.ISO_8859_1));
        }
        return made;
    }
}
