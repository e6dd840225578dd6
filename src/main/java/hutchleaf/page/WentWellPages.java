package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.WentWell;
import hutchleaf.page.WentWellView.Sheet;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes the view of primary's slip. */
final class WentWellPages {
    /** Room for the lines to tick in half a page: mm. */
    private static final double ROOM = 84;

    /** A line of 16 pt: mm. */
    private static final double LINE = 7.1;

    /** Least air under a line, so that a 7.4 mm tick stands clear of the next: mm. */
    private static final double LEAST_GAP = 2.6;

    private static final double MOST_GAP = 7;

    /** Letters of 16 pt beside a tick. */
    private static final int LETTERS = 33;

    private WentWellPages() {}

    /** The view; empty when half a page is too small for the lines, which is a problem at their file. */
    static Optional<WentWellView> of(Edition edition, Look look, String club, Problems problems) {
        return view(edition, look, club, problems, Optional.empty(), SheetFill.blank(2));
    }

    /** The same for a class: a slip for each of its sheets, two on a page. */
    static Optional<WentWellView> of(Edition edition, Look look, JudgedClass shown, Problems problems) {
        List<SheetFill> slips = shown.sheets().stream()
                .map(entrant -> SheetFill.slip(shown, entrant))
                .toList();
        return view(edition, look, shown.show().club(), problems, Optional.of(JudgeHead.of(shown)), slips);
    }

    private static Optional<WentWellView> view(
            Edition edition,
            Look look,
            String club,
            Problems problems,
            Optional<JudgeHead> head,
            List<SheetFill> slips) {
        WentWell slip = edition.library().contest().wentWell();
        int lines = slip.ticks().stream()
                .mapToInt(tick -> BlockViews.lines(tick.plain(), LETTERS))
                .sum();
        double gap = (ROOM - lines * LINE) / Math.max(1, slip.ticks().size());
        if (gap < LEAST_GAP) {
            problems.add(
                    slip.at(),
                    "the slip has room for " + (int) (ROOM / (LINE + LEAST_GAP)) + " lines to tick, these take "
                            + lines,
                    "keep five to seven, each up to " + LETTERS + " letters");
            return Optional.empty();
        }
        return Optional.of(new WentWellView(
                look,
                club,
                slip.title(),
                Markup.unlinked(edition).writeAll(slip.ticks()),
                Math.min(gap, MOST_GAP),
                head,
                pages(slips)));
    }

    /** The last page is filled up with a slip that is written by hand. */
    private static List<Sheet> pages(List<SheetFill> slips) {
        return IntStream.range(0, (slips.size() + 1) / 2)
                .mapToObj(page -> new Sheet(
                        slips.get(2 * page), 2 * page + 1 < slips.size() ? slips.get(2 * page + 1) : SheetFill.BLANK))
                .toList();
    }
}
