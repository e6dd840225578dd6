package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.sheet.Booklet.Binding;
import hutchleaf.sheet.Booklet.Side;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Page orders of booklets, against published listings and by folding. */
final class BookletTest {
    /** Public listings of saddle-stitch page orders for 4 to 16 pages; left and right of front and back, outermost first. */
    @ParameterizedTest
    @CsvSource({
        "4, 4|1 2|3",
        "8, 8|1 2|7 6|3 4|5",
        "12, 12|1 2|11 10|3 4|9 8|5 6|7",
        "16, 16|1 2|15 14|3 4|13 12|5 6|11 10|7 8|9",
        // Rounded up to 12 (pages are a multiple of four: PNW BOCES booklet guide), the last three empty.
        "9, -|1 2|- -|3 4|9 8|5 6|7",
        "1, -|1 -|-"
    })
    void aNestedBookletHasThePublishedPageOrder(int pages, String order) {
        assertThat(order(Booklet.of(pages, Binding.NESTED))).isEqualTo(order);
    }

    /** By hand: each sheet folded once is one leaf. */
    @ParameterizedTest
    @CsvSource({"2, 1|2", "6, 1|2 3|4 5|6", "5, 1|2 3|4 5|-"})
    void aStackedBookletHasItsPagesTwoByTwo(int pages, String order) {
        assertThat(order(Booklet.of(pages, Binding.STACKED))).isEqualTo(order);
    }

    private static String order(Booklet booklet) {
        return booklet.sides().stream()
                .map(side -> name(side.left()) + "|" + name(side.right()))
                .collect(Collectors.joining(" "));
    }

    private static String name(OptionalInt page) {
        return page.isPresent() ? String.valueOf(page.getAsInt()) : "-";
    }

    static IntStream manyPages() {
        return IntStream.rangeClosed(1, 70);
    }

    @ParameterizedTest
    @MethodSource("manyPages")
    void noPageIsLostOrDoubledAndFewerThanASheetStayEmpty(int pages) {
        for (Binding binding : Binding.values()) {
            Booklet booklet = Booklet.of(pages, binding);
            var all = booklet.sides().stream()
                    .flatMap(side -> Stream.of(side.left(), side.right()))
                    .flatMapToInt(OptionalInt::stream)
                    .boxed()
                    .toList();
            assertThat(all).hasSize(pages);
            assertThat(new TreeSet<>(all).last()).isEqualTo(pages);
            assertThat(booklet.blanks()).isBetween(0, binding.pagesOfASheet() - 1);
        }
        assertThat(Booklet.of(pages, Binding.NESTED).sheets()).isEqualTo(PaperCount.booklet(pages));
        assertThat(Booklet.of(pages, Binding.NESTED).blanks()).isEqualTo(PaperCount.blankPages(pages));
    }

    @ParameterizedTest
    @MethodSource("manyPages")
    void thePagesOfASideAddUpToOneMoreThanAllPages(int pages) {
        Booklet booklet = Booklet.of(pages, Binding.NESTED);
        for (Side side : booklet.sides()) {
            if (side.left().isPresent() && side.right().isPresent()) {
                assertThat(side.left().getAsInt() + side.right().getAsInt()).isEqualTo(pages + booklet.blanks() + 1);
            }
        }
    }

    /** A sheet turned over its short edge has the back's left half behind the front's right half: one leaf, two pages. */
    @ParameterizedTest
    @MethodSource("manyPages")
    void turnedOverItsShortEdgeEachLeafHoldsPagesThatFollow(int pages) {
        Booklet booklet = Booklet.of(pages, Binding.NESTED);
        for (int front = 0; front < booklet.sides().size(); front += 2) {
            OptionalInt recto = booklet.sides().get(front).right();
            OptionalInt verso = booklet.sides().get(front + 1).left();
            if (verso.isPresent()) {
                assertThat(verso.getAsInt()).isEqualTo(recto.orElseThrow() + 1);
            }
        }
    }

    /** Thickness: mcgpaper.com, 20 lb 0.097 mm and 24 lb 0.12 mm; prepressure.com, 80 g/m² about 0.004 in. */
    @ParameterizedTest
    @CsvSource({"75.2, 0.097", "80, 0.1016", "90.3, 0.12"})
    void aSheetIsAsThickAsTheMerchantSays(double gsm, double mm) {
        assertThat(Caliper.of(new Grammage(gsm)).mm()).isCloseTo(mm, within(0.0025));
    }

    /** Worked from the nested form of the shingling sum, 0.097 mm a sheet: 16 pages 0.291 mm, 48 pages 1.067 mm. */
    @ParameterizedTest
    @CsvSource({"16, 4, 0.291", "48, 12, 1.067", "48, 1, 0"})
    void theInnermostSheetMovesByAllSheetsRoundIt(int pages, int sheet, double mm) {
        Booklet booklet = Booklet.of(pages, Binding.NESTED);
        assertThat(booklet.creep(sheet, new Grammage(75.2)).mm()).isCloseTo(mm, within(0.01));
        assertThat(Booklet.of(pages, Binding.STACKED).creep(sheet, new Grammage(75.2)))
                .isEqualTo(Length.ZERO);
    }

    @Test
    void heavierPaperIsThicker() {
        double last = 0;
        for (int gsm = 50; gsm <= 200; gsm++) {
            double now = Caliper.of(new Grammage(gsm)).mm();
            assertThat(now).as("%d g/m2", gsm).isGreaterThan(last);
            last = now;
        }
    }

    @Test
    void aBookletWithoutAPageIsRefused() {
        assertThatThrownBy(() -> Booklet.of(0, Binding.NESTED)).hasMessage("a booklet of 0 pages");
    }
}
