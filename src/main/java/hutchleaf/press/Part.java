package hutchleaf.press;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A finished PDF, or some of its pages, taken apart for binding. Numbers are those of its pieces, from nought. */
final class Part {
    /** The piece under which all its tags stand. */
    static final int TAGS = 0;

    /** The piece under which all its pages stand. */
    static final int PAGES = 1;

    /**
     * What a part holds beside its pieces.
     *
     * @param title the file's own
     * @param language the file's own
     * @param pages how many
     * @param owners the piece for each key of the parent tree, in order
     * @param roles what its own kinds of tags stand for
     */
    record Contents(
            String title,
            String language,
            int pages,
            List<Integer> owners,
            Map<String, String> roles,
            List<Bookmark> bookmarks,
            List<Face> faces) {}

    private final List<Piece> pieces;
    private final Contents contents;
    private final byte[] digest;
    private final int weight;
    private @Nullable Gathering first;

    /**
     * @param digest of the bytes it was read from, and of the pages taken
     */
    Part(List<Piece> pieces, Contents contents, byte[] digest) {
        this.pieces = List.copyOf(pieces);
        this.contents = contents;
        this.digest = digest.clone();
        this.weight = pieces.stream().mapToInt(Piece::weight).sum();
    }

    List<Piece> pieces() {
        return pieces;
    }

    Contents contents() {
        return contents;
    }

    byte[] digest() {
        return digest.clone();
    }

    /** In bytes, about as much as it takes in a file. */
    int weight() {
        return weight;
    }

    /** A piece and all it leads to. */
    BitSet from(int piece) {
        BitSet found = new BitSet();
        Deque<Integer> open = new ArrayDeque<>(List.of(piece));
        while (!open.isEmpty()) {
            int next = open.pop();
            if (!found.get(next)) {
                found.set(next);
                pieces.get(next).references().forEach(open::push);
            }
        }
        return found;
    }

    /** The part as the first of a bound file, kept for the next one; most files of a run start with a shared part. */
    synchronized Gathering first() {
        Gathering known = first;
        if (known == null) {
            known = Gathering.of(this, Binder.FIRST_NUMBER, 0, List.of());
            first = known;
        }
        return known;
    }

    /** The face of this part that can print what another can, if there is one. */
    Optional<Face> covering(Face other) {
        return contents.faces().stream().filter(face -> face.covers(other)).findFirst();
    }
}
