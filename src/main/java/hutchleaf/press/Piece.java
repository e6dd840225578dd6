package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * One object of a PDF as it is written, with gaps for the numbers that are known only when it is bound: references to
 * other objects of its part, and keys into the parent tree.
 */
final class Piece {
    private final byte[] text;
    private final int[] gaps;
    private final int[] targets;
    private final boolean stream;
    private final byte[] data;
    private final int hash;

    /**
     * @param gaps where in the text the numbers go, in order
     * @param targets what goes there: an object's number within the part, or the complement of a key
     */
    private Piece(byte[] text, int[] gaps, int[] targets, boolean stream, byte[] data) {
        this.text = text;
        this.gaps = gaps;
        this.targets = targets;
        this.stream = stream;
        this.data = data;
        this.hash = 31 * Arrays.hashCode(text) + Arrays.hashCode(data);
    }

    static Piece object(byte[] text, int[] gaps, int[] targets) {
        return new Piece(text, gaps, targets, false, new byte[0]);
    }

    /**
     * @param text the stream's dictionary, without its length and its closing brackets
     * @param data as it stands in the file, its filters applied
     */
    static Piece stream(byte[] text, int[] gaps, int[] targets, byte[] data) {
        return new Piece(text, gaps, targets, true, data);
    }

    boolean isStream() {
        return stream;
    }

    /** In bytes, before it is packed. */
    int weight() {
        return text.length + data.length;
    }

    /** Whether it refers to nothing, so that an equal one of another part can stand for it. */
    boolean standsAlone() {
        return targets.length == 0;
    }

    /** The objects it refers to, by their numbers within the part. */
    IntStream references() {
        return Arrays.stream(targets).filter(target -> target >= 0);
    }

    /**
     * Writes it out, a stream with its data.
     *
     * @param numbers the number in the file for each number of the part
     * @param firstKey what the part's keys are counted from
     */
    void write(ByteArrayOutputStream out, IntUnaryOperator numbers, int firstKey) {
        int from = 0;
        for (int i = 0; i < gaps.length; i++) {
            out.write(text, from, gaps[i] - from);
            boolean reference = targets[i] >= 0;
            int number = reference ? numbers.applyAsInt(targets[i]) : firstKey + ~targets[i];
            ascii(out, reference ? number + " 0 R" : Integer.toString(number));
            from = gaps[i];
        }
        out.write(text, from, text.length - from);
        if (stream) {
            ascii(out, "/Length " + data.length + ">>\nstream\n");
            out.write(data, 0, data.length);
            ascii(out, "\nendstream");
        }
    }

    static void ascii(ByteArrayOutputStream out, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        out.write(bytes, 0, bytes.length);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Piece piece
                && hash == piece.hash
                && stream == piece.stream
                && Arrays.equals(text, piece.text)
                && Arrays.equals(gaps, piece.gaps)
                && Arrays.equals(targets, piece.targets)
                && Arrays.equals(data, piece.data);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
