package hutchleaf.sheet;

import hutchleaf.sheet.CardMaking.Axis;
import java.awt.geom.AffineTransform;

/**
 * What a printer does to a page, and how the page is changed beforehand so that it comes out right. It is measured on the
 * sheet of {@code hutchleaf ruler}, which is held sideways as cards and booklets are, so that both have one x and one y.
 *
 * <p>A printer puts what stands at p to c + S(p - c), where c is the middle of the page and S the two scales; on a back it
 * adds the offset o. Offsets are as seen from the front: positive where the back lies too far to the right, or too far
 * down. A back is read from the other side, so what is seen through the sheet is its page mirrored on the line on which the
 * sheet was turned. Turned on an upright line, right and left change places and the back's page sees the offset as Ro =
 * (-x, y); turned on a level line, Ro = (x, -y). So p is drawn at c + (p - c) / S on fronts, and at c + (p - c - Ro) / S on
 * backs, and the printer brings it to p. A printer that keeps another point than the middle in its place moves both sides
 * of a sheet by the same length, since the measured offset holds the rest: fronts and backs still meet.
 *
 * @param scaleX percent of its true length that a level line measures once it is printed
 * @param scaleY percent of its true length that an upright line measures
 * @param offsetX how far the back lies to the right of where it should, seen from the front
 * @param offsetY how far the back lies below where it should
 */
public record Correction(double scaleX, double scaleY, Length offsetX, Length offsetY) {
    /** A printer that is further out than this has scaled the page to fit: percent. Own rule. */
    public static final double LEAST_SCALE = 95;

    /** The largest scale: percent. Own rule. */
    public static final double MOST_SCALE = 105;

    /** The largest offset either way. Own rule. */
    public static final Length MOST_OFFSET = Length.mm(10);

    /** Nothing is moved nearer to the edge than this without a warning. Common practice, no source. */
    public static final Length EDGE = Length.mm(6);

    /** Nothing is wrong, and nothing changes. */
    public static final Correction NONE = new Correction(100, 100, Length.ZERO, Length.ZERO);

    private static final double PERCENT = 100;

    /**
     * Four numbers in range.
     *
     * @throws IllegalArgumentException when one is not
     */
    public Correction {
        if (!scale(scaleX) || !scale(scaleY) || !offset(offsetX) || !offset(offsetY)) {
            throw new IllegalArgumentException(
                    "no printer does " + scaleX + ", " + scaleY + ", " + offsetX + ", " + offsetY);
        }
    }

    /** Whether a scale is in range. */
    public static boolean scale(double percent) {
        return percent >= LEAST_SCALE && percent <= MOST_SCALE;
    }

    /** Whether an offset is in range. */
    public static boolean offset(Length length) {
        return Math.abs(length.points()) <= MOST_OFFSET.points() + 1e-9;
    }

    /** Whether pages stay as they are. */
    public boolean changesNothing() {
        return equals(NONE);
    }

    /** Where what belongs at a point of a front is drawn: in points from the top left corner of a page of this size. */
    public AffineTransform front(Length width, Length height) {
        return about(width, height, 0, 0);
    }

    /**
     * Where what belongs at a point of a back is drawn: in points from the top left corner of a page of this size.
     *
     * @param turnedOn the line on which the sheet was turned, as it is held to be read
     */
    public AffineTransform back(Length width, Length height, Axis turnedOn) {
        return switch (turnedOn) {
            case UPRIGHT -> about(width, height, -offsetX.points(), offsetY.points());
            case LEVEL -> about(width, height, offsetX.points(), -offsetY.points());
        };
    }

    /**
     * c + (p - c - offset) / S.
     *
     * @throws IllegalArgumentException when the page stands upright: a printer turns it to the left or to the right, so
     *     nobody knows which way the offset would lie
     */
    private AffineTransform about(Length width, Length height, double right, double down) {
        if (width.compareTo(height) < 0) {
            throw new IllegalArgumentException("a page of " + width + " by " + height + " is not held sideways");
        }
        AffineTransform drawn = AffineTransform.getTranslateInstance(width.points() / 2, height.points() / 2);
        drawn.scale(PERCENT / scaleX, PERCENT / scaleY);
        drawn.translate(-width.points() / 2 - right, -height.points() / 2 - down);
        return drawn;
    }
}
