package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.IdentityHashMap;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Writes objects of a file so that what is alike is written alike, however the file numbers and packs it. */
final class CosRecord {
    /** How a stream is packed, and where an object hangs in the file. */
    private static final Set<String> PACKING =
            Set.of("Length", "Filter", "DecodeParms", "Parent", "P", "Pg", "StructParent", "StructParents");

    private final IdentityHashMap<COSStream, byte[]> streams = new IdentityHashMap<>();

    void write(@Nullable COSBase object, ByteArrayOutputStream out) throws IOException {
        if (object instanceof COSObject reference) {
            write(reference.getObject(), out);
        } else if (object instanceof COSStream stream) {
            out.writeBytes(digest(stream));
        } else if (object instanceof COSDictionary dictionary) {
            entries(dictionary, out);
        } else if (object instanceof COSArray array) {
            out.write('[');
            for (COSBase item : array) {
                write(item, out);
            }
            out.write(']');
        } else {
            out.write(' ');
            Pieces.simple(out, object);
        }
    }

    private void entries(COSDictionary dictionary, ByteArrayOutputStream out) throws IOException {
        TreeMap<String, COSBase> sorted = new TreeMap<>();
        dictionary.forEach((key, value) -> sorted.put(key.getName(), value));
        sorted.keySet().removeAll(PACKING);
        Piece.ascii(out, "<<");
        for (var entry : sorted.entrySet()) {
            COSName.getPDFName(entry.getKey()).writePDF(out);
            write(entry.getValue(), out);
        }
        Piece.ascii(out, ">>");
    }

    private byte[] digest(COSStream stream) throws IOException {
        byte[] known = streams.get(stream);
        if (known == null) {
            ByteArrayOutputStream entries = new ByteArrayOutputStream();
            entries(stream, entries);
            known = Digest.of(entries.toByteArray(), data(stream));
            streams.put(stream, known);
        }
        return known;
    }

    /** Unpacked, since another machine may pack otherwise; a picture's own coding stays. */
    private static byte[] data(COSStream stream) throws IOException {
        COSBase filters = stream.getFilters();
        boolean plain = filters == null || COSName.FLATE_DECODE.equals(filters);
        try (InputStream in = plain ? stream.createInputStream() : stream.createRawInputStream()) {
            return in.readAllBytes();
        }
    }
}
