package hutchleaf.press;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A part's objects written with their numbers in a bound file. Where an earlier part has a font that covers one of this
 * part, or the same stream, this part uses that.
 */
final class Gathering {
    private final Part part;
    private final int[] numbers;
    private final BitSet leftOut = new BitSet();
    private final Map<Piece, Integer> streams = new HashMap<>();
    private final Numbered written;

    private Gathering(Part part, int firstNumber, int firstKey, List<Gathering> before) {
        this.part = part;
        this.numbers = new int[part.pieces().size()];
        part.contents().faces().forEach(face -> share(face, before));
        int next = firstNumber;
        for (int i = 0; i < numbers.length; i++) {
            if (!leftOut.get(i) && !share(i, before)) {
                numbers[i] = next++;
            }
        }
        this.written = new Numbered(next);
        for (int i = 0; i < numbers.length; i++) {
            if (!leftOut.get(i)) {
                written.add(numbers[i], part.pieces().get(i), local -> numbers[local], firstKey);
            }
        }
        written.finish();
    }

    /**
     * Writes a part.
     *
     * @param firstNumber its first object gets
     * @param firstKey its first entry in the parent tree gets
     * @param before the parts already written
     */
    static Gathering of(Part part, int firstNumber, int firstKey, List<Gathering> before) {
        return new Gathering(part, firstNumber, firstKey, before);
    }

    private void share(Face face, List<Gathering> before) {
        for (Gathering earlier : before) {
            var covering = earlier.part.covering(face);
            if (covering.isPresent()) {
                leftOut.or(part.from(face.piece()));
                numbers[face.piece()] = earlier.number(covering.get().piece());
                return;
            }
        }
    }

    /** Whether the same stream stands in the file already; if not, notes it for those that follow. */
    private boolean share(int index, List<Gathering> before) {
        Piece piece = part.pieces().get(index);
        if (!piece.isStream() || !piece.standsAlone()) {
            return false;
        }
        for (Gathering earlier : before) {
            Integer known = earlier.streams.get(piece);
            if (known != null) {
                numbers[index] = known;
                leftOut.set(index);
                return true;
            }
        }
        return false;
    }

    /** The number in the bound file of one of the part's pieces. */
    int number(int piece) {
        return numbers[piece];
    }

    Part part() {
        return part;
    }

    Numbered written() {
        return written;
    }
}
