package hutchleaf.sheet;

import java.util.Locale;

/** A length that carries its unit: points (1/72 inch, ISO 32000-1 8.3.2.3) inside, millimetres at the edges. */
public record Length(double points) implements Comparable<Length> {
    /** What must meet across a fold or a cut may differ by this much: 0.05 mm. */
    public static final Length TOLERANCE = Length.mm(0.05);

    public static final Length ZERO = new Length(0);

    private static final double POINTS_PER_MM = 72 / 25.4;

    public static Length mm(double millimetres) {
        return new Length(millimetres * POINTS_PER_MM);
    }

    public static Length inches(double inches) {
        return new Length(inches * 72);
    }

    /** Millimetres. */
    public double mm() {
        return points / POINTS_PER_MM;
    }

    public Length plus(Length other) {
        return new Length(points + other.points);
    }

    public Length minus(Length other) {
        return new Length(points - other.points);
    }

    public Length times(double factor) {
        return new Length(points * factor);
    }

    /** How many of a size stand side by side in this length; an exact fit counts, within {@link #TOLERANCE}. */
    public int holds(Length size) {
        return (int) Math.max(0, Math.floor((points + TOLERANCE.points) / size.points));
    }

    /** Equal within {@link #TOLERANCE}. */
    public boolean about(Length other) {
        return Math.abs(points - other.points) <= TOLERANCE.points;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(points, other.points);
    }

    /** Millimetres to three places, as CSS writes them: {@code 63.5mm}. */
    public String css() {
        // Adding 0.0 turns the negative zero that rounding leaves into zero.
        double thousandths = Math.rint(mm() * 1000) / 1000 + 0.0;
        String number = String.format(Locale.ROOT, "%.3f", thousandths);
        return number.replaceAll("\\.?0+$", "") + "mm";
    }

    @Override
    public String toString() {
        return css();
    }
}
