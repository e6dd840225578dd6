package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What the template of primary's slip sees.
 *
 * @param gap air under each line to tick, in millimetres
 * @param head written into every slip beforehand; absent where that is done by hand
 */
record WentWellView(
        Look look,
        String club,
        String title,
        List<Xml> ticks,
        double gap,
        Optional<JudgeHead> head,
        List<Sheet> sheets) {
    /** A page that is cut in two. */
    record Sheet(SheetFill upper, SheetFill lower) {}
}
