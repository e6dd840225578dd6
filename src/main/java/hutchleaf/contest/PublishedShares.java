package hutchleaf.contest;

import java.util.List;
import java.util.Map;

/**
 * What rabbit score cards in print give each part, as shares of the whole. Sources are ids of {@code sources.md}; a card
 * of which only an upper limit is known (C06) stands under the caps.
 */
final class PublishedShares {
    /**
     * The least and the most that a card gives.
     *
     * @param cards the sources of the cards that score it
     */
    record Range(double least, double most, List<String> cards) {
        Range {
            cards = List.copyOf(cards);
        }

        static Range of(double least, double most, String... cards) {
            return new Range(least, most, List.of(cards));
        }
    }

    /** By stop. Introduction (3) and turning back (14) have no points of their own on any card; 16 is comments and close. */
    static final Map<Integer, Range> STOPS = Map.ofEntries(
            Map.entry(1, Range.of(0.05, 0.10, "C01", "C02", "C03", "C04")),
            Map.entry(2, Range.of(0.05, 0.20, "C01", "C02", "C03", "C04")),
            Map.entry(4, Range.of(0.05, 0.05, "C01", "C02", "C04")),
            Map.entry(5, Range.of(0.05, 0.10, "C01", "C04")),
            Map.entry(6, Range.of(0.04, 0.05, "C01", "C02", "C04")),
            Map.entry(7, Range.of(0.03, 0.05, "C01", "C02", "C04")),
            Map.entry(8, Range.of(0.04, 0.05, "C01", "C02", "C04")),
            Map.entry(9, Range.of(0.05, 0.09, "C01", "C02", "C04")),
            Map.entry(10, Range.of(0.05, 0.05, "C01", "C02")),
            Map.entry(11, Range.of(0.05, 0.09, "C01", "C02", "C04")),
            Map.entry(12, Range.of(0.05, 0.05, "C01", "C02")),
            Map.entry(13, Range.of(0.05, 0.05, "C01", "C02")),
            Map.entry(15, Range.of(0.05, 0.05, "C01", "C02")),
            Map.entry(16, Range.of(0.06, 0.15, "C01", "C02")));

    static final Range APPEARANCE = Range.of(0.10, 0.10, "C02", "C03");
    static final Range CONTROL = Range.of(0.10, 0.10, "C02");
    static final Range QUESTIONS = Range.of(0.10, 0.10, "C02", "C03");

    /** Carry, pose, turning over and control together. */
    static final Range HANDLING = Range.of(0.15, 0.30, "C01", "C02", "C03", "C04");

    /** The whole examination, ears to fur, without the turns. */
    static final Range EXAMINATION = Range.of(0.30, 0.52, "C01", "C02", "C03");

    /** All work at the table, carry to fur. */
    static final Range TABLE_WORK = Range.of(0.60, 0.74, "C01", "C02", "C03", "C05");

    static final Range COMMENTS = Range.of(0.06, 0.15, "C01", "C02");

    /** Naming faults aloud inside the stops; one card alone splits doing from saying. */
    static final Range NAMING = Range.of(0.22, 0.22, "C01");

    /** Upper limits of a national standard (C06). */
    static final double APPEARANCE_CAP = 0.10;

    static final double QUESTIONS_CAP = 0.20;
    static final String CAPS = "C06";

    /** A group of parts may lie outside what the cards give by this much: there are two to four cards for each. */
    static final double GROUP_SLACK = 0.10;

    private PublishedShares() {}
}
