package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.sheet.CardMaking.Turn;
import hutchleaf.sheet.CardMaking.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How many cards a sheet holds, and where each front and its back lie. */
final class CardSheetTest {
    static Stream<CardSheet> sheets() {
        List<CardSheet> sheets = new ArrayList<>();
        for (Paper paper : Paper.values()) {
            for (CardFormat format : CardFormat.values()) {
                for (Way way : Way.values()) {
                    for (Turn turn : Turn.values()) {
                        sheets.add(new CardSheet(paper, format, new CardMaking(way, turn)));
                    }
                }
            }
        }
        return sheets.stream();
    }

    /**
     * Cards to a sheet without gutters, upright and turned. Sizes by definition of the inch and of US Letter (ANSI Y14.1);
     * counts worked by hand in whole points: 576 by 756 of Letter are left by margins of a quarter of an inch. Exact
     * fits, where a float falls short: 576 is 4 business cards (144) and 2 of the fold-over ones (288), 756 is 3 of 252.
     */
    @ParameterizedTest
    @CsvSource({
        "3 by 5 index card, 216, 360, 4, 3",
        "4 by 6 index card, 288, 432, 2, 2",
        "business card, 252, 144, 10, 12",
        "fold-over index card, 216, 720, 2, 0",
        "fold-over index card side by side, 432, 360, 2, 1",
        "fold-over business card, 252, 288, 4, 6",
    })
    void aLetterSheetHoldsWhatWholePointsSay(String what, int width, int height, int upright, int turned) {
        assertThat(count(inches(8), inches(10.5), inches(width / 72.0), inches(height / 72.0)))
                .as(what)
                .isEqualTo(upright)
                .isEqualTo((576 / width) * (756 / height));
        assertThat(count(inches(8), inches(10.5), inches(height / 72.0), inches(width / 72.0)))
                .as(what + ", turned")
                .isEqualTo(turned)
                .isEqualTo((576 / height) * (756 / width));
    }

    /** The same with margins of 7 mm, worked by hand: 201.9 by 265.4 mm of Letter are left, 196 by 283 of A4. */
    @ParameterizedTest
    @CsvSource({
        "LETTER, 3, 5, 4, 3",
        "LETTER, 4, 6, 1, 2",
        "LETTER, 3.5, 2, 10, 6",
        "LETTER, 3, 10, 2, 0",
        "LETTER, 3.5, 4, 4, 2",
        "A4, 3, 5, 4, 3",
        "A4, 4, 6, 1, 2",
        "A4, 3.5, 2, 10, 9",
        "A4, 3.5, 4, 4, 3",
    })
    void marginsOfSevenMillimetresCostSomeOfThem(Paper paper, double width, double height, int upright, int turned) {
        Length wide = paper.width().minus(CardSheet.EDGE.times(2));
        Length high = paper.height().minus(CardSheet.EDGE.times(2));
        assertThat(count(wide, high, inches(width), inches(height))).isEqualTo(upright);
        assertThat(count(wide, high, inches(height), inches(width))).isEqualTo(turned);
    }

    /** ISO 216: each size is the one before it halved, rounded down; so A4 holds 2 A5, 4 A6, 8 A7 and 16 A8, to the edge. */
    @ParameterizedTest
    @CsvSource({"148, 210, 2", "105, 148, 4", "74, 105, 8", "52, 74, 16"})
    void aPaperOfIso216HoldsItsHalves(double width, double height, int halves) {
        Length wide = Paper.A4.width();
        Length high = Paper.A4.height();
        int upright = count(wide, high, Length.mm(width), Length.mm(height));
        int turned = count(wide, high, Length.mm(height), Length.mm(width));
        assertThat(Math.max(upright, turned)).isEqualTo(halves);
    }

    private static int count(Length wide, Length high, Length width, Length height) {
        return wide.holds(width) * high.holds(height);
    }

    private static Length inches(double inches) {
        return Length.inches(inches);
    }

    /** A size that fits exactly is counted, whatever the last digit of the sum is; one 0.1 mm too large is not. */
    @Test
    void anExactFitCountsAndATenthOfAMillimetreTooMuchDoesNot() {
        for (int many = 1; many <= 40; many++) {
            for (double size : new double[] {0.1, 3.3, 25.4 / 3, 52.5, 88.9}) {
                assertThat(Length.mm(size * many).holds(Length.mm(size)))
                        .as(many + " of " + size)
                        .isEqualTo(many);
            }
        }
        assertThat(Length.mm(120).holds(Length.mm(60.1))).isEqualTo(1);
        assertThat(Length.mm(59.9).holds(Length.mm(60))).isZero();
    }

    /** Worked by hand: half of Letter held sideways is 139.7 mm, of A4 148.5, less 7 for the edge; 22 or more for signs. */
    @ParameterizedTest
    @CsvSource({"SMALL, 8, 16", "STANDARD, 6, 12", "PRIMARY, 4, 8", "INDEX, 2, 4", "LARGE_PRINT, 2, 4"})
    void bothPapersHoldAsManyCardsOfASize(CardFormat format, int folded, int twoSided) {
        for (Paper paper : Paper.values()) {
            for (Way way : Way.values()) {
                CardSheet sheet = new CardSheet(paper, format, new CardMaking(way, Turn.PAGE));
                assertThat(sheet.cards()).as(sheet.toString()).isEqualTo(way.twoSided() ? twoSided : folded);
            }
        }
    }

    /** Source of the counts: 61 cards four to a sheet take 16 sheets with 3 empty places (worked by hand). */
    @Test
    void anOddLastSheetKeepsItsPlaces() {
        assertThat(CardSheet.primary(Paper.A4).sheets(61)).isEqualTo(16);
        assertThat(CardSheet.standard(Paper.LETTER).sheets(6)).isEqualTo(1);
        assertThat(CardSheet.standard(Paper.LETTER).sheets(0)).isZero();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyCardLiesOnThePrintableAreaAndOverNoOther(CardSheet sheet) {
        List<Box> page = new ArrayList<>();
        List<Box> backs = new ArrayList<>();
        for (int place = 0; place < sheet.cards(); place++) {
            page.add(sheet.front(place));
            (sheet.making().way().twoSided() ? backs : page).add(sheet.back(place));
        }
        for (List<Box> boxes : List.of(page, backs)) {
            for (Box box : boxes) {
                assertThat(box.width().about(sheet.cardWidth())).isTrue();
                assertThat(box.height().about(sheet.cardHeight())).isTrue();
                assertThat(box.x().mm()).as(sheet + " " + box).isGreaterThan(6.95);
                assertThat(box.y().mm()).as(sheet + " " + box).isGreaterThan(6.95);
                assertThat(box.right().mm()).isLessThan(sheet.paper().height().mm() - 6.95);
                assertThat(box.bottom().mm()).isLessThan(sheet.paper().width().mm() - 6.95);
                assertThat(boxes.stream().filter(other -> overlap(box, other)))
                        .as("over %s of %s", box, sheet)
                        .containsExactly(box);
            }
        }
    }

    private static boolean overlap(Box one, Box other) {
        return one.x().mm() < other.right().mm() - 0.1
                && other.x().mm() < one.right().mm() - 0.1
                && one.y().mm() < other.bottom().mm() - 0.1
                && other.y().mm() < one.bottom().mm() - 0.1;
    }

    /**
     * Where a back lies in the grid as the printer's page is read. Held upright, a sheet that is turned on its long edge
     * keeps its rows and mirrors its columns; one turned on its short edge keeps its columns; held sideways it is the
     * other way round (common practice, no source).
     */
    @ParameterizedTest
    @MethodSource("sheets")
    void aMapOfTwoSidesIsItsOwnInverse(CardSheet sheet) {
        if (!sheet.making().way().twoSided()) {
            return;
        }
        boolean longEdge = sheet.making().way() == Way.LONG_EDGE;
        int columns = sheet.columns();
        int[] behind = new int[sheet.cards()];
        for (int place = 0; place < sheet.cards(); place++) {
            Box back = sheet.back(place);
            int column = (int) Math.round(back.x().minus(sheet.backGrid().x()).points()
                    / sheet.cardWidth().points());
            int row = (int) Math.round(back.y().minus(sheet.backGrid().y()).points()
                    / sheet.cardHeight().points());
            behind[place] = row * columns + column;
            assertThat(row).isEqualTo(longEdge ? sheet.rows() - 1 - place / columns : place / columns);
            assertThat(column).isEqualTo(longEdge ? place % columns : columns - 1 - place % columns);
        }
        for (int place = 0; place < sheet.cards(); place++) {
            assertThat(behind[behind[place]]).as(sheet.toString()).isEqualTo(place);
        }
        assertThat(IntStream.of(behind).distinct().count()).isEqualTo(sheet.cards());
    }

    /** A line that two mirrorings share keeps a page upright; two that cross turn it by 180 degrees. */
    @ParameterizedTest
    @EnumSource
    void turningUpTurnsTheBacksThatTurningLikeAPageDoesNot(Way way) {
        assertThat(new CardMaking(way, Turn.PAGE).turnsBacks())
                .isNotEqualTo(new CardMaking(way, Turn.UP).turnsBacks())
                .isEqualTo(way == Way.LONG_EDGE);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void foldingTwiceGivesTheBoxBack(CardSheet sheet) {
        for (int place = 0; place < sheet.cards(); place++) {
            Box front = sheet.front(place);
            assertThat(front.foldedOn(sheet.middle()).foldedOn(sheet.middle()).about(front))
                    .isTrue();
            assertThat(front.foldedOnLevel(sheet.middle())
                            .foldedOnLevel(sheet.middle())
                            .about(front))
                    .isTrue();
        }
    }
}
