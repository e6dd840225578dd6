package hutchleaf.page;

import hutchleaf.page.ScoreView.Points;
import hutchleaf.page.ScoreView.Sums;
import java.util.List;
import java.util.Optional;

/**
 * What the template of a grid for ten contestants sees: a page held sideways, places in millimetres.
 *
 * @param head written into every grid beforehand; absent where that is done by hand
 * @param grids one for each page
 */
record GridView(
        Look look,
        Optional<JudgeHead> head,
        Frame at,
        List<Row> blocks,
        List<Item> items,
        Sums sums,
        List<Grid> grids) {
    /** The ten columns of a page. */
    record Grid(List<SheetFill> columns) {}

    /**
     * The page and its columns.
     *
     * @param first where the first contestant's column begins
     * @param contestant width of a contestant's column
     * @param gutter width of the gap after the fifth, and of the strip at the right
     */
    record Frame(
            double width,
            double height,
            double top,
            double first,
            double contestant,
            double gutter,
            double block,
            double item,
            double number) {}

    /**
     * A block of stops.
     *
     * @param lines what stands under its name: its stops, then what costs nothing
     */
    record Row(String letter, String name, List<String> lines, Points points) {}

    /** What counts all through, with the two letters that stand for it. */
    record Item(String letters, String name, int points) {}
}
