package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What the template of a score sheet for one contestant sees. Places are millimetres from the page's top left corner.
 *
 * @param club whose name stands under the title; may be empty
 * @param head written into every sheet beforehand; absent where that is done by hand
 * @param sheets one for each page
 */
record ScoreView(
        Look look,
        String club,
        Optional<JudgeHead> head,
        Frame at,
        List<BlockView> blocks,
        List<ItemView> items,
        Sums sums,
        List<SheetFill> sheets) {
    /**
     * Where the parts of the sheet stand.
     *
     * @param right where lines and boxes end
     * @param itemsTop where the last block ends and what counts all through begins
     * @param footTop where that ends and the sums begin
     */
    record Frame(double width, double height, double right, double itemsTop, double itemHeight, double footTop) {}

    /**
     * Stops scored together.
     *
     * @param noteLines heights of the writing lines beside it, from the page's top
     */
    record BlockView(
            String letter,
            String name,
            String lookingFor,
            Span at,
            List<StopRow> stops,
            List<Double> noteLines,
            Points points) {}

    /** A stretch of the page from top to bottom. */
    record Span(double top, double height) {}

    /** Most points of a block. */
    record Points(int hands, int voice) {}

    /** A stop with its two ticks. */
    record StopRow(int no, String name, double middle) {}

    /**
     * What counts all through.
     *
     * @param cells small cells in its box, one for each question; 0 for none
     */
    record ItemView(String name, String lookingFor, int points, double top, int cells) {}

    /** The sum line. */
    record Sums(int hands, int voice, int allThrough, int total) {}
}
