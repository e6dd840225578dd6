package hutchleaf.contest;

import hutchleaf.contest.PublishedShares.Range;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.ScoreSheet.Block;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Holds a sheet's shares against {@link PublishedShares}. A block's points count for its stops in equal parts; where a
 * block holds the last stop, what is said there is the commentary and what is shown belongs to its other stops.
 *
 * <p>A part may have half the least to twice the most that a card gives, a group {@link PublishedShares#GROUP_SLACK} less
 * or more. Common practice, no source: with two to four cards a part, a harder test would only mirror them.
 */
final class ShareCheck {
    private static final int CLOSE = 16;
    private static final Set<Integer> HANDLING = Set.of(1, 2, 3, 5, 14);
    private static final Set<Integer> EXAMINATION = Set.of(4, 6, 7, 8, 9, 10, 11, 12, 13, 15);
    private static final String CONTROL = "Care and control";
    private static final String APPEARANCE = "Appearance";

    /** Shares are sums of hundredths: what is exactly on a limit is inside it. */
    private static final double ROUNDING = 1e-9;

    private final ScoreSheet sheet;
    private final Problems problems;

    ShareCheck(ScoreSheet sheet, Problems problems) {
        this.sheet = sheet;
        this.problems = problems;
    }

    void warn() {
        sheet.blocks().forEach(this::block);
        part(APPEARANCE, item(APPEARANCE), PublishedShares.APPEARANCE);
        part(CONTROL, item(CONTROL), PublishedShares.CONTROL);
        part(QuestionMarks.ITEM, item(QuestionMarks.ITEM), PublishedShares.QUESTIONS);
        cap(APPEARANCE, PublishedShares.APPEARANCE_CAP);
        cap(QuestionMarks.ITEM, PublishedShares.QUESTIONS_CAP);
        group("carry, pose, turns and control", of(HANDLING) + item(CONTROL), PublishedShares.HANDLING);
        group("the examination, ears to fur", of(EXAMINATION), PublishedShares.EXAMINATION);
        group("all work at the table", of(HANDLING) + of(EXAMINATION), PublishedShares.TABLE_WORK);
        group("comments and close", sum(block -> closes(block) ? block.voice() : 0), PublishedShares.COMMENTS);
        group("naming aloud at the stops", sum(block -> closes(block) ? 0 : block.voice()), PublishedShares.NAMING);
    }

    private void block(Block block) {
        List<Range> ranges = block.stops().stream()
                .map(PublishedShares.STOPS::get)
                .filter(Objects::nonNull)
                .toList();
        if (!ranges.isEmpty()) {
            part(
                    "block " + block.letter() + " (" + block.name() + ")",
                    share(block.hands() + block.voice()),
                    new Range(
                            ranges.stream().mapToDouble(Range::least).sum(),
                            ranges.stream().mapToDouble(Range::most).sum(),
                            ranges.stream()
                                    .flatMap(range -> range.cards().stream())
                                    .distinct()
                                    .sorted()
                                    .toList()));
        }
    }

    private void part(String what, double share, Range range) {
        outside(what, share, range, range.least() / 2, range.most() * 2);
    }

    private void group(String what, double share, Range range) {
        double slack = PublishedShares.GROUP_SLACK;
        outside(what, share, range, Math.max(0, range.least() - slack), range.most() + slack);
    }

    private void outside(String what, double share, Range range, double low, double high) {
        if (share < low - ROUNDING || share > high + ROUNDING) {
            problems.warn(
                    sheet.at(),
                    given(what, share) + "; cards in print give "
                            + (range.least() == range.most() ? "" : percent(range.least()) + " to ")
                            + percent(range.most()) + " (" + String.join(", ", range.cards()) + ")",
                    "keep it between " + percent(low) + " and " + percent(high) + ", or know why not");
        }
    }

    private void cap(String what, double most) {
        if (item(what) > most + ROUNDING) {
            problems.warn(
                    sheet.at(),
                    given(what, item(what)) + "; one standard allows " + percent(most) + " (" + PublishedShares.CAPS
                            + ")",
                    "give it less, or know why not");
        }
    }

    private String given(String what, double share) {
        return sheet.level().word() + " gives " + what + " " + percent(share) + " of the points";
    }

    /** The share of all items of a name. */
    private double item(String name) {
        return share(sheet.items().stream()
                .filter(item -> item.name().equalsIgnoreCase(name))
                .mapToInt(ScoreSheet.Item::points)
                .sum());
    }

    private double of(Set<Integer> stops) {
        return sum(block -> {
            long held = block.stops().stream().filter(stops::contains).count();
            return closes(block)
                    ? block.hands() * (double) held / Math.max(1, block.stops().size() - 1)
                    : (block.hands() + block.voice())
                            * (double) held
                            / block.stops().size();
        });
    }

    private static boolean closes(Block block) {
        return block.stops().contains(CLOSE);
    }

    private double sum(ToDoubleFunction<Block> points) {
        return share(sheet.blocks().stream().mapToDouble(points).sum());
    }

    private double share(double points) {
        return points / sheet.total();
    }

    /** {@code 12.5 %}. */
    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f", share * 100).replaceAll("\\.0$", "") + " %";
    }
}
