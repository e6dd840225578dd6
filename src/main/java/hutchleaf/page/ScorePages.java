package hutchleaf.page;

import hutchleaf.contest.QuestionMarks;
import hutchleaf.edition.Edition;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Setting;
import hutchleaf.page.ScoreView.BlockView;
import hutchleaf.page.ScoreView.Frame;
import hutchleaf.page.ScoreView.ItemView;
import hutchleaf.page.ScoreView.Points;
import hutchleaf.page.ScoreView.Span;
import hutchleaf.page.ScoreView.StopRow;
import hutchleaf.page.ScoreView.Sums;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Places a score sheet for one contestant. The head and the foot have fixed heights; the blocks share what is between
 * them, each at least as high as its words, its stops and its number boxes, and the rows below the blocks give way first.
 */
final class ScorePages {
    /** Where the first block begins, below the head: mm. */
    private static final double BLOCKS_TOP = 51.2;

    /** Height of all that stands below the rows, with the margin under it: mm. */
    private static final double FOOT = 78.2;

    private static final double RIGHT_MARGIN = 9;
    private static final double ROW = 11.4;
    private static final double LEAST_ROW = 10.2;

    /** A number box of 13.4 mm, its lines, and air for the hand. */
    private static final double LEAST_BLOCK = 15.8;

    private static final double NAME_LINE = 6.4;
    private static final double TEXT_LINE = 4.1;
    private static final double LEAST_STOP = 6;
    private static final double STOPS_AIR = 1;

    /** Letters of 10 pt that stand in the 44 mm beside a block's letter. */
    private static final int LETTERS = 29;

    private static final double WRITING_LINE = 7.8;

    private final Edition edition;
    private final ScoreSheet sheet;
    private final Paper paper;
    private final Setting setting;

    private ScorePages(Edition edition, ScoreSheet sheet, Paper paper, Setting setting) {
        this.setting = setting;
        this.edition = edition;
        this.sheet = sheet;
        this.paper = paper;
    }

    /** The view; empty when the sheet's words need more room than the page has, which is a problem at the sheet's line. */
    static Optional<ScoreView> of(
            Edition edition, ScoreSheet sheet, Paper paper, Setting setting, String club, Problems problems) {
        return new ScorePages(edition, sheet, paper, setting)
                .view(club, Optional.empty(), SheetFill.blank(1), problems);
    }

    /** The same for a class: a page for each of its sheets, with what is known of each contestant in its place. */
    static Optional<ScoreView> of(
            Edition edition, ScoreSheet sheet, Paper paper, Setting setting, JudgedClass shown, Problems problems) {
        List<SheetFill> sheets = shown.sheets().stream()
                .map(entrant -> SheetFill.sheet(shown, entrant))
                .toList();
        return new ScorePages(edition, sheet, paper, setting)
                .view(shown.show().club(), Optional.of(JudgeHead.of(shown).onAForm()), sheets, problems);
    }

    private Optional<ScoreView> view(String club, Optional<JudgeHead> head, List<SheetFill> sheets, Problems problems) {
        double height = paper.height().mm();
        double footTop = height - FOOT;
        double room = footTop - BLOCKS_TOP;
        List<Double> least = sheet.blocks().stream().map(this::least).toList();
        double needed = least.stream().mapToDouble(Double::doubleValue).sum();
        int rows = sheet.items().size();
        double row = rows == 0 ? ROW : Math.min(ROW, (room - needed) / rows);
        if (row < LEAST_ROW) {
            problems.add(
                    sheet.at(),
                    sheet.level().word() + ": the sheet is " + Math.round(needed + rows * LEAST_ROW - room)
                            + " mm too high",
                    "shorten what the longest blocks look for: " + LETTERS + " letters make a line of 4 mm");
            return Optional.empty();
        }
        double itemsTop = footTop - rows * row;
        double spare = (itemsTop - BLOCKS_TOP - needed) / Math.max(1, least.size());
        return Optional.of(new ScoreView(
                Look.of(edition.level(), paper, setting),
                club,
                head,
                new Frame(paper.width().mm(), height, paper.width().mm() - RIGHT_MARGIN, itemsTop, row, footTop),
                blocks(least, spare),
                items(itemsTop, row),
                new Sums(sheet.hands(), sheet.voice(), sheet.allThrough(), sheet.total()),
                sheets));
    }

    private double least(ScoreSheet.Block block) {
        return DoubleStream.of(
                        LEAST_BLOCK,
                        NAME_LINE + TEXT_LINE * lines(block.lookingFor()),
                        STOPS_AIR + LEAST_STOP * block.stops().size())
                .max()
                .orElse(LEAST_BLOCK);
    }

    private static int lines(String text) {
        int lines = 1;
        int used = -1;
        for (String word : text.split(" ")) {
            used += 1 + word.length();
            if (used > LETTERS) {
                lines++;
                used = word.length();
            }
        }
        return lines;
    }

    private List<BlockView> blocks(List<Double> least, double spare) {
        List<BlockView> views = new ArrayList<>();
        double top = BLOCKS_TOP;
        for (int index = 0; index < least.size(); index++) {
            Span span = new Span(top, least.get(index) + spare);
            views.add(block(sheet.blocks().get(index), span));
            top += span.height();
        }
        return views;
    }

    private BlockView block(ScoreSheet.Block block, Span span) {
        int count = block.stops().size();
        double pitch = Math.min(7, (span.height() - STOPS_AIR) / count);
        double first = span.top() + (span.height() - pitch * (count - 1)) / 2;
        List<StopRow> stops = IntStream.range(0, count)
                .mapToObj(index -> {
                    int no = block.stops().get(index);
                    return new StopRow(
                            no, edition.library().routine().station(no).name(), first + pitch * index);
                })
                .toList();
        // The rule under the block is the last line to write on.
        int lines = (int) (span.height() / WRITING_LINE);
        List<Double> notes = IntStream.range(1, lines)
                .mapToObj(line -> span.top() + line * span.height() / lines)
                .toList();
        return new BlockView(
                block.letter(),
                block.name(),
                block.lookingFor(),
                span,
                stops,
                notes,
                new Points(block.hands(), block.voice()));
    }

    private List<ItemView> items(double top, double row) {
        int asked = QuestionMarks.of(sheet).map(QuestionMarks::asked).orElse(0);
        return IntStream.range(0, sheet.items().size())
                .mapToObj(index -> {
                    ScoreSheet.Item item = sheet.items().get(index);
                    boolean questions = item.name().equalsIgnoreCase(QuestionMarks.ITEM);
                    return new ItemView(
                            item.name(), item.lookingFor(), item.points(), top + index * row, questions ? asked : 0);
                })
                .toList();
    }
}
