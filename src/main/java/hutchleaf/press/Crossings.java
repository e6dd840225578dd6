package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** The cross-reference stream of a file (ISO 32000-1, 7.5.8): where each of its objects stands. */
final class Crossings {
    /** Widths of a row's columns in bytes: kind, place, index. */
    private static final String COLUMNS = "/W[1 4 2]";

    private static final int ROW = 1 + 4 + 2;
    private static final byte FREE = 0;
    private static final byte PLAIN = 1;
    private static final byte PACKED = 2;

    private record Run(Numbered objects, int offset) {}

    private final List<Run> runs = new ArrayList<>();
    private int size = 1;

    /** Puts a run of objects at the end of a file. */
    void add(Numbered run, ByteArrayOutputStream file) {
        runs.add(new Run(run, file.size()));
        run.writeTo(file);
        size = Math.max(size, run.next());
    }

    /**
     * Ends the file.
     *
     * @param trailer what its trailer says beside size and rows
     */
    void finish(ByteArrayOutputStream file, String trailer) {
        int own = size;
        int start = file.size();
        ByteBuffer rows = ByteBuffer.allocate((size + 1) * ROW);
        rows.put(FREE).putInt(0).putShort((short) 0xffff);
        for (Run run : runs) {
            for (Numbered.Entry entry : run.objects().entries()) {
                rows.position(entry.number() * ROW);
                boolean plain = entry.index() < 0;
                rows.put(plain ? PLAIN : PACKED);
                rows.putInt(plain ? run.offset() + entry.where() : entry.where());
                rows.putShort((short) Math.max(0, entry.index()));
            }
        }
        rows.position(own * ROW);
        rows.put(PLAIN).putInt(start).putShort((short) 0);
        Numbered last = new Numbered(own + 1);
        String dictionary = "/Type/XRef/Size " + (own + 1) + COLUMNS + trailer + "/Filter/FlateDecode";
        last.add(own, dictionary, Numbered.deflated(rows.array()));
        last.writeTo(file);
        Piece.ascii(file, "startxref\n" + start + "\n%%EOF\n");
    }
}
