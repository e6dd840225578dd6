package hutchleaf.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Study without a date, with five boxes: box b is looked at in every session that 2^(b-1) divides. A card starts in box
 * 1; known, it moves to the next box; not known, back to box 1.
 *
 * <p>Boxes for cards are Leitner's (So lernt man lernen, 1972), who looked at a box when it was full; the doubling rule
 * is our own.
 */
public final class DoublingBox {
    /** So many boxes. */
    public static final int BOXES = 5;

    /** After so many sessions the table starts again. */
    public static final int SESSIONS = 1 << (BOXES - 1);

    private DoublingBox() {}

    /**
     * One row of the table to print.
     *
     * @param session from 1
     * @param boxes looked at in that session, from 1
     */
    public record Row(int session, List<Integer> boxes) {
        public Row {
            boxes = List.copyOf(boxes);
        }
    }

    /** Which boxes are looked at in sessions 1 to {@link #SESSIONS}. */
    public static List<Row> table() {
        return IntStream.rangeClosed(1, SESSIONS)
                .mapToObj(session -> new Row(session, boxesIn(session)))
                .toList();
    }

    /** The boxes that are looked at in a session, counted from 1. */
    public static List<Integer> boxesIn(int session) {
        atLeastOne(session);
        return IntStream.rangeClosed(1, BOXES)
                .filter(box -> session % every(box) == 0)
                .boxed()
                .toList();
    }

    /** The sessions, counted from 1, in which a card that is always known is seen, box by box. */
    public static List<Integer> sessions(int firstSession) {
        atLeastOne(firstSession);
        List<Integer> sessions = new ArrayList<>(List.of(firstSession));
        int last = firstSession;
        for (int box = 2; box <= BOXES; box++) {
            last = (last / every(box) + 1) * every(box);
            sessions.add(last);
        }
        return List.copyOf(sessions);
    }

    private static int every(int box) {
        return 1 << (box - 1);
    }

    private static void atLeastOne(int session) {
        if (session < 1) {
            throw new IllegalArgumentException("session " + session);
        }
    }
}
