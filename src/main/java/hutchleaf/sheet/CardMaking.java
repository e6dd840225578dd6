package hutchleaf.sheet;

import java.util.Locale;
import java.util.Optional;

/**
 * How a card gets its back. Printing, folding and turning each mirror a page on a line; a back whose two mirrorings
 * cross each other is printed upside down, so that it reads upright in the hand.
 */
public record CardMaking(Way way, Turn turn) {
    /** Fold the whole sheet, turn like a page. */
    public static final CardMaking USUAL = new CardMaking(Way.FOLD_SHEET, Turn.PAGE);

    /** How front and back come together. */
    public enum Way {
        /** The whole sheet is folded in the middle, glued, then cut. */
        FOLD_SHEET(Axis.UPRIGHT),
        /** Each card is cut out with its back beside it, folded and glued. */
        FOLD_CARD(Axis.UPRIGHT),
        /** A printer turns the sheet on its long edge, which lies level where a sheet is held sideways. */
        LONG_EDGE(Axis.LEVEL),
        /** A printer turns the sheet on its short edge. */
        SHORT_EDGE(Axis.UPRIGHT);

        private final Axis axis;

        Way(Axis axis) {
            this.axis = axis;
        }

        /** The line on which backs mirror fronts. */
        public Axis axis() {
            return axis;
        }

        /** {@code fold-sheet}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Whether backs have a page of their own. */
        public boolean twoSided() {
            return this == LONG_EDGE || this == SHORT_EDGE;
        }

        /** The line on which a printer turns every second page, a back; empty where all pages are fronts. */
        public Optional<Axis> backs() {
            return twoSided() ? Optional.of(axis) : Optional.empty();
        }
    }

    /** How a reader turns a card to its answer. */
    public enum Turn {
        /** To the side, like the page of a book. */
        PAGE(Axis.UPRIGHT),
        /** Upward, like the sheet of a wall calendar. */
        UP(Axis.LEVEL);

        private final Axis axis;

        Turn(Axis axis) {
            this.axis = axis;
        }
    }

    /** A line on the sheet, as it is held to be read. */
    public enum Axis {
        UPRIGHT,
        LEVEL
    }

    /** Whether backs are printed upside down. */
    public boolean turnsBacks() {
        return way.axis != turn.axis;
    }
}
