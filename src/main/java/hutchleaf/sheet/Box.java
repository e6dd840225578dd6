package hutchleaf.sheet;

/** A rectangle on a page, measured from its top left corner. */
public record Box(Length x, Length y, Length width, Length height) {
    public Length right() {
        return x.plus(width);
    }

    public Length bottom() {
        return y.plus(height);
    }

    /** Where the box lands when the sheet is folded on an upright line. */
    public Box foldedOn(Length fold) {
        return new Box(fold.times(2).minus(right()), y, width, height);
    }

    /** Where the box lands when the sheet is folded on a level line. */
    public Box foldedOnLevel(Length fold) {
        return new Box(x, fold.times(2).minus(bottom()), width, height);
    }

    /** Equal within {@link Length#TOLERANCE} on every side. */
    public boolean about(Box other) {
        return x.about(other.x) && y.about(other.y) && width.about(other.width) && height.about(other.height);
    }
}
