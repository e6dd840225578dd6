package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.zip.DeflaterOutputStream;

/** A run of numbered objects as they stand in a file, those without data packed into object streams. */
final class Numbered {
    /** More objects in one stream would be slow to reach, fewer would pack less well. Common practice, no source. */
    private static final int PACK = 200;

    /**
     * Where an object stands (ISO 32000-1, table 18).
     *
     * @param where its offset in this run, or the number of the stream that it is packed into
     * @param index its place in that stream; less than zero for an object that is not packed
     */
    record Entry(int number, int where, int index) {}

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
    private final StringBuilder places = new StringBuilder();
    private final List<Integer> inPack = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private int next;

    /**
     * @param next the first number that no object of this run has; object streams get the numbers from there
     */
    Numbered(int next) {
        this.next = next;
    }

    void add(int number, Piece piece, IntUnaryOperator numbers, int firstKey) {
        if (piece.isStream()) {
            begin(number);
            piece.write(out, numbers, firstKey);
            end();
        } else {
            pack(number);
            piece.write(packed, numbers, firstKey);
            packed.write('\n');
            flushWhenFull();
        }
    }

    void add(int number, byte[] text) {
        pack(number);
        packed.write(text, 0, text.length);
        packed.write('\n');
        flushWhenFull();
    }

    /**
     * Adds a stream.
     *
     * @param entries of its dictionary, without its length
     */
    void add(int number, String entries, byte[] data) {
        begin(number);
        Piece.ascii(out, "<<" + entries + "/Length " + data.length + ">>\nstream\n");
        out.write(data, 0, data.length);
        Piece.ascii(out, "\nendstream");
        end();
    }

    private void begin(int number) {
        entries.add(new Entry(number, out.size(), -1));
        Piece.ascii(out, number + " 0 obj\n");
    }

    private void end() {
        Piece.ascii(out, "\nendobj\n");
    }

    private void pack(int number) {
        inPack.add(number);
        places.append(number).append(' ').append(packed.size()).append(' ');
    }

    private void flushWhenFull() {
        if (inPack.size() == PACK) {
            finish();
        }
    }

    /** Writes what is still to be packed; call it last. */
    void finish() {
        if (inPack.isEmpty()) {
            return;
        }
        int stream = next++;
        for (int i = 0; i < inPack.size(); i++) {
            entries.add(new Entry(inPack.get(i), stream, i));
        }
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        Piece.ascii(both, places.toString());
        both.writeBytes(packed.toByteArray());
        String dictionary = "/Type/ObjStm/N " + inPack.size() + "/First " + places.length() + "/Filter/FlateDecode";
        add(stream, dictionary, deflated(both.toByteArray()));
        inPack.clear();
        places.setLength(0);
        packed.reset();
    }

    static byte[] deflated(byte[] bytes) {
        ByteArrayOutputStream small = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(small)) {
            deflater.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("memory cannot fail", e);
        }
        return small.toByteArray();
    }

    /** The first number that neither an object of this run nor one of its object streams has. */
    int next() {
        return next;
    }

    int size() {
        return out.size();
    }

    List<Entry> entries() {
        return entries;
    }

    void writeTo(ByteArrayOutputStream file) {
        try {
            out.writeTo(file);
        } catch (IOException e) {
            throw new UncheckedIOException("memory cannot fail", e);
        }
    }
}
