package hutchleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The sheet on which a leader measures a printer, held sideways: stairs to the edges, lines of known length, and steps that
 * show through where the back lies. The lines of the back run through the middle of the page, so that they mean the same
 * on whichever edge the sheet is turned.
 */
public record RulerSheet(Paper paper) {
    /** True length of the level line. */
    public static final Length LEVEL = Length.mm(200);

    /** True length of the upright line. */
    public static final Length UPRIGHT = Length.mm(150);

    /** True length of the level line for rulers in inches. */
    public static final Length LEVEL_INCHES = Length.inches(8);

    /** True length of the upright line for rulers in inches. */
    public static final Length UPRIGHT_INCHES = Length.inches(6);

    /** The stairs reach from the edge of the paper so many millimetres inwards, a step each. */
    public static final int STAIRS = 15;

    /** Steps of half a millimetre on either side of nought. */
    public static final int HALVES = 8;

    /** 0.9 pt, the thinnest line that lives through a copy. */
    private static final double THIN = 0.9 * 25.4 / 72;

    private static final double THICK = 0.5;
    private static final double STAIR = 5.5;
    private static final double STAIR_BAR = 4.5;
    private static final double STAIR_FOOT = 17;
    private static final double STEP = 4;
    private static final double STEP_MARK = 3.2;
    private static final double CROSS = 8;
    private static final double TOP = 25.5;

    /**
     * A word beside a line.
     *
     * @param x its middle
     * @param y its middle
     */
    public record Label(Length x, Length y, String text) {}

    /** What a side of the sheet is drawn with: filled boxes, all of them lines. */
    public record Drawn(List<Box> lines, List<Label> labels) {
        public Drawn {
            lines = List.copyOf(lines);
            labels = List.copyOf(labels);
        }
    }

    public Length width() {
        return paper.height();
    }

    public Length height() {
        return paper.width();
    }

    /** The side with the stairs, the long lines and the steps. */
    public Drawn front() {
        Pen pen = new Pen();
        stairs(pen);
        lengths(pen);
        steps(pen);
        cross(pen);
        return pen.drawn();
    }

    /** The side whose two lines show through. */
    public Drawn back() {
        Pen pen = new Pen();
        pen.level(24, width().mm() - 24, middleY(), THIN);
        pen.upright(middleX(), 24, height().mm() - 24, THIN);
        return pen.drawn();
    }

    private double middleX() {
        return width().mm() / 2;
    }

    private double middleY() {
        return height().mm() / 2;
    }

    /** A bar at each millimetre from each edge; its outer side is the measure, so that it is whole or not there. */
    private void stairs(Pen pen) {
        double right = width().mm();
        double bottom = height().mm();
        for (int mm = 0; mm <= STAIRS; mm++) {
            String number = Integer.toString(mm);
            double along = (mm - (STAIRS + 1) / 2.0) * STAIR + (STAIR - STAIR_BAR) / 2;
            double x = middleX() + along;
            double y = middleY() + along;
            double midX = x + STAIR_BAR / 2;
            double midY = y + STAIR_BAR / 2;
            pen.box(x, mm, STAIR_BAR, THIN);
            pen.upright(midX, mm, STAIR_FOOT, THIN);
            pen.label(midX, STAIR_FOOT + 2.3, number);
            pen.box(x, bottom - mm - THIN, STAIR_BAR, THIN);
            pen.upright(midX, bottom - STAIR_FOOT, bottom - mm, THIN);
            pen.label(midX, bottom - STAIR_FOOT - 2.3, number);
            pen.box(mm, y, THIN, STAIR_BAR);
            pen.level(mm, STAIR_FOOT, midY, THIN);
            pen.label(STAIR_FOOT + 2.8, midY, number);
            pen.box(right - mm - THIN, y, THIN, STAIR_BAR);
            pen.level(right - STAIR_FOOT, right - mm, midY, THIN);
            pen.label(right - STAIR_FOOT - 2.8, midY, number);
        }
    }

    private void lengths(Pen pen) {
        levelLength(pen, LEVEL, height().mm() - 31, "200 mm");
        levelLength(pen, LEVEL_INCHES, height().mm() - 23.5, "8 in");
        uprightLength(pen, UPRIGHT, 28, "150 mm");
        uprightLength(pen, UPRIGHT_INCHES, 41, "6 in");
    }

    private void levelLength(Pen pen, Length length, double y, String label) {
        double left = middleX() - length.mm() / 2;
        double right = middleX() + length.mm() / 2;
        pen.level(left, right, y, THICK);
        pen.upright(left, y - 2.5, y + 2.5, THIN);
        pen.upright(right, y - 2.5, y + 2.5, THIN);
        pen.label(left + 10, y - 2.6, label);
    }

    private static void uprightLength(Pen pen, Length length, double x, String label) {
        pen.upright(x, TOP, TOP + length.mm(), THICK);
        pen.level(x - 2.5, x + 2.5, TOP, THIN);
        pen.level(x - 2.5, x + 2.5, TOP + length.mm(), THIN);
        pen.label(x, TOP - 3, label);
    }

    /** Short marks, each half a millimetre further than the last: one of them lies on the line of the back. */
    private void steps(Pen pen) {
        for (int half = -HALVES; half <= HALVES; half++) {
            double offset = half / 2.0;
            double along = (half + HALVES) * STEP;
            double y = TOP + along;
            double x = middleX() + 13 + along;
            pen.upright(middleX() + offset, y, y + STEP_MARK, THIN);
            pen.level(x, x + STEP_MARK, middleY() + offset, THIN);
            if (half % 2 == 0) {
                pen.label(middleX() - 9, y + STEP_MARK / 2, signed(half / 2));
                pen.label(x + STEP_MARK / 2, middleY() + 8, signed(half / 2));
            }
        }
    }

    private static String signed(int number) {
        return number == 0 ? "0" : String.format(Locale.ROOT, "%s%d", number < 0 ? "\u2212" : "+", Math.abs(number));
    }

    /** A cross with a tick each millimetre, for the hole of a pin. */
    private void cross(Pen pen) {
        pen.level(middleX() - CROSS, middleX() + CROSS, middleY(), THIN);
        pen.upright(middleX(), middleY() - CROSS, middleY() + CROSS, THIN);
        for (int mm = (int) -CROSS; mm <= CROSS; mm++) {
            double tick = mm % 5 == 0 ? 1.8 : 0.9;
            if (mm != 0) {
                pen.upright(middleX() + mm, middleY() - tick, middleY() + tick, THIN);
                pen.level(middleX() - tick, middleX() + tick, middleY() + mm, THIN);
            }
        }
    }

    /** Gathers lines and words; all in millimetres. */
    private static final class Pen {
        private final List<Box> lines = new ArrayList<>();
        private final List<Label> labels = new ArrayList<>();

        void box(double x, double y, double width, double height) {
            lines.add(new Box(Length.mm(x), Length.mm(y), Length.mm(width), Length.mm(height)));
        }

        /** A line along the page, its middle at y. */
        void level(double from, double to, double y, double weight) {
            box(from, y - weight / 2, to - from, weight);
        }

        /** A line down the page, its middle at x. */
        void upright(double x, double from, double to, double weight) {
            box(x - weight / 2, from, weight, to - from);
        }

        void label(double x, double y, String text) {
            labels.add(new Label(Length.mm(x), Length.mm(y), text));
        }

        Drawn drawn() {
            return new Drawn(lines, labels);
        }
    }
}
