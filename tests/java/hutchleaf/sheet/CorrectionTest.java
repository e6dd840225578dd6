package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.sheet.CardMaking.Axis;
import java.awt.geom.Point2D;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Corrections against a simulated printer. It knows nothing of them: it scales what it is given, turns the sheet over and
 * prints the back beside its place. That a sheet which is turned on a line shows its back mirrored on that line is common
 * practice, no source.
 */
final class CorrectionTest {
    private static final int SEEDS = 200;
    private static final double SAME = 1e-6;

    /**
     * A printer with its faults. All points are in points from the top left corner of the sheet, seen from its front.
     *
     * @param keptFront what scaling leaves in its place on fronts
     * @param keptBack what it leaves in its place on backs
     * @param fault how far backs lie beside that
     */
    private record Printer(
            Paper paper, double scaleX, double scaleY, Point2D keptFront, Point2D keptBack, Point2D fault) {
        Point2D front(Point2D page) {
            return scaled(page, keptFront);
        }

        /** Where a point of the back's page lands. */
        Point2D back(Point2D page, Axis turnedOn) {
            Point2D seen = scaled(behind(page, turnedOn), keptBack);
            return new Point2D.Double(seen.getX() + fault.getX(), seen.getY() + fault.getY());
        }

        /** Where a point of the back's page should be. */
        Point2D behind(Point2D page, Axis turnedOn) {
            return switch (turnedOn) {
                case UPRIGHT -> new Point2D.Double(paper.height().points() - page.getX(), page.getY());
                case LEVEL -> new Point2D.Double(page.getX(), paper.width().points() - page.getY());
            };
        }

        private Point2D scaled(Point2D place, Point2D kept) {
            return new Point2D.Double(
                    kept.getX() + scaleX * (place.getX() - kept.getX()),
                    kept.getY() + scaleY * (place.getY() - kept.getY()));
        }
    }

    private static Correction of(Printer printer, Point2D measured) {
        return new Correction(
                100 * printer.scaleX(),
                100 * printer.scaleY(),
                new Length(measured.getX()),
                new Length(measured.getY()));
    }

    private static double upTo(double most, Random random) {
        return most * (2 * random.nextDouble() - 1);
    }

    private static Point2D somewhere(Paper paper, Random random) {
        return new Point2D.Double(
                paper.height().points() * random.nextDouble(), paper.width().points() * random.nextDouble());
    }

    private static Point2D middle(Paper paper) {
        return new Point2D.Double(paper.height().points() / 2, paper.width().points() / 2);
    }

    @ParameterizedTest
    @CsvSource({"LETTER, UPRIGHT", "LETTER, LEVEL", "A4, UPRIGHT", "A4, LEVEL"})
    void everyPointOfFrontsAndBacksLandsWhereItShould(Paper paper, Axis turnedOn) {
        for (int seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            double most = Length.mm(9.9).points();
            Point2D fault = new Point2D.Double(upTo(most, random), upTo(most, random));
            Printer printer = new Printer(
                    paper, 1 + upTo(0.049, random), 1 + upTo(0.049, random), middle(paper), middle(paper), fault);
            Correction correction = of(printer, fault);
            Point2D place = somewhere(paper, random);
            Point2D front = printer.front(
                    correction.front(paper.height(), paper.width()).transform(place, null));
            assertThat(front.distance(place)).as("front, seed " + seed).isLessThan(SAME);
            Point2D back = printer.back(
                    correction.back(paper.height(), paper.width(), turnedOn).transform(place, null), turnedOn);
            assertThat(back.distance(printer.behind(place, turnedOn)))
                    .as("back, seed " + seed)
                    .isLessThan(SAME);
        }
    }

    /** The leader reads the offset in the middle of the ruler sheet, turned on either edge. */
    @ParameterizedTest
    @CsvSource({"UPRIGHT, UPRIGHT", "UPRIGHT, LEVEL", "LEVEL, UPRIGHT", "LEVEL, LEVEL"})
    void aPrinterThatKeepsAnEdgeInItsPlaceStillBringsBacksBehindFronts(Axis measuredOn, Axis turnedOn) {
        Paper paper = Paper.A4;
        for (int seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            Printer printer = new Printer(
                    paper,
                    1 + upTo(0.02, random),
                    1 + upTo(0.02, random),
                    somewhere(paper, random),
                    somewhere(paper, random),
                    new Point2D.Double(upTo(5, random), upTo(5, random)));
            Point2D front = printer.front(middle(paper));
            Point2D back = printer.back(middle(paper), measuredOn);
            Correction correction =
                    of(printer, new Point2D.Double(back.getX() - front.getX(), back.getY() - front.getY()));
            Point2D place = somewhere(paper, random);
            Point2D printedFront = printer.front(
                    correction.front(paper.height(), paper.width()).transform(printer.behind(place, turnedOn), null));
            Point2D printedBack = printer.back(
                    correction.back(paper.height(), paper.width(), turnedOn).transform(place, null), turnedOn);
            assertThat(printedBack.distance(printedFront)).as("seed " + seed).isLessThan(SAME);
        }
    }

    /** By hand: A4 sideways, 99 percent, half a sheet is 148.5 mm: 148.5 - 148.5 / 0.99 = -1.5. */
    @Test
    void aPageThatPrintsTooSmallIsDrawnLargerAboutItsMiddle() {
        Correction correction = new Correction(99, 100, Length.ZERO, Length.ZERO);
        Point2D corner =
                correction.front(Paper.A4.height(), Paper.A4.width()).transform(new Point2D.Double(0, 0), null);
        assertThat(new Length(corner.getX()).mm()).isCloseTo(-1.5, within(1e-9));
        assertThat(corner.getY()).isCloseTo(0, within(1e-9));
    }

    /** By hand: seen from the front the back lies 2 mm right and 1 mm down. */
    @ParameterizedTest
    @CsvSource({"UPRIGHT, 2, -1", "LEVEL, -2, 1"})
    void aBackIsMovedAgainstItsOffsetAsItsOwnPageIsRead(Axis turnedOn, double x, double y) {
        Correction correction = new Correction(100, 100, Length.mm(2), Length.mm(1));
        Point2D moved = correction
                .back(Paper.LETTER.height(), Paper.LETTER.width(), turnedOn)
                .transform(new Point2D.Double(0, 0), null);
        assertThat(new Length(moved.getX()).mm()).isCloseTo(x, within(1e-9));
        assertThat(new Length(moved.getY()).mm()).isCloseTo(y, within(1e-9));
    }

    @Test
    void anUprightPageIsRefused() {
        assertThatThrownBy(() -> Correction.NONE.front(Paper.A4.width(), Paper.A4.height()))
                .hasMessage("a page of 210mm by 297mm is not held sideways");
    }

    @Test
    void numbersOutOfRangeAreRefused() {
        assertThatThrownBy(() -> new Correction(94.9, 100, Length.ZERO, Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Correction(100, 100, Length.ZERO, Length.mm(10.1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Correction(95, 105, Length.mm(-10), Length.mm(10)).changesNothing())
                .isFalse();
    }
}
