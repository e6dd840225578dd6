package hutchleaf.page;

import hutchleaf.contest.CountingWord;
import hutchleaf.contest.QuestionSet;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Setting;
import hutchleaf.page.JudgeListView.Columns;
import hutchleaf.page.JudgeListView.Content;
import hutchleaf.page.JudgeListView.Frame;
import hutchleaf.page.JudgeListView.Line;
import hutchleaf.page.JudgeListView.Lines;
import hutchleaf.page.JudgeListView.Points;
import hutchleaf.page.JudgeListView.Seal;
import hutchleaf.page.JudgedClass.Beside;
import hutchleaf.page.JudgedClass.Entrant;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes the view of the lists on a judge's clipboard, and counts what lies on it. */
final class JudgeListPages {
    private static final double RIGHT_MARGIN = 9;

    /** Where the first line of each list begins, and the rows' heights, as the templates draw them: mm. */
    private static final double LIST_TOP = 46;

    private static final double FOOT = 10;
    private static final double CHECK_IN_ROW = 10.2;
    private static final double ORDER_ROW = 13;
    private static final double TALLY_ROW = 12;

    /** What the first page of the check-in list has below it: the contents of the clipboard. */
    private static final double CONTENTS = 70;

    /** What the order of showing and the tally have below them: a line or two on how to use them. */
    private static final double NOTE = 14;

    /** What each set of questions is meant for, common practice, no source. */
    private static final List<String> USES =
            List.of("the class", "the call-back", "another class, or if set A was seen");

    private final JudgedClass shown;
    private final Paper paper;
    private final Setting setting;
    private final Optional<ScoreSheet> sheet;
    private final List<QuestionSet> sets;

    private JudgeListPages(
            JudgedClass shown, Paper paper, Setting setting, Optional<ScoreSheet> sheet, List<QuestionSet> sets) {
        this.setting = setting;
        this.shown = shown;
        this.paper = paper;
        this.sheet = sheet.filter(found -> shown.scored());
        this.sets = sets;
    }

    /**
     * The view of all lists.
     *
     * @param sheet the level's, whose total the tally names
     * @param sets that are printed with them
     */
    static JudgeListView of(
            JudgedClass shown, Paper paper, Setting setting, Optional<ScoreSheet> sheet, List<QuestionSet> sets) {
        return new JudgeListPages(shown, paper, setting, sheet, sets).view();
    }

    private JudgeListView view() {
        double height = paper.height().mm();
        List<Line> lines = shown.lines().stream().map(this::line).toList();
        double room = height - LIST_TOP - FOOT;
        List<Lines> checkIn = pages(lines, (int) ((room - CONTENTS) / CHECK_IN_ROW), (int) (room / CHECK_IN_ROW));
        int inOrder = (int) ((room - NOTE) / ORDER_ROW);
        List<Lines> order = pages(lines, inOrder, inOrder);
        int added = (int) ((room - NOTE) / TALLY_ROW);
        List<Lines> tally = shown.ranked() && first() ? pages(lines, added, added) : List.of();
        List<Content> contents = contents(checkIn.size(), order.size(), tally.size());
        return new JudgeListView(
                Look.of(shown.level(), paper, setting),
                JudgeHead.of(shown),
                new Frame(paper.width().mm(), height, paper.width().mm() - RIGHT_MARGIN),
                first(),
                new Columns(
                        shown.beside() == Beside.INITIAL || shown.beside() == Beside.WHOLE,
                        shown.beside().showsRabbit()),
                sheet.map(found -> new Points(found.total(), shown.judging().judges())),
                contents,
                contents.stream().mapToInt(Content::pages).sum(),
                checkIn,
                order,
                tally,
                seals());
    }

    /** Whether this is the clipboard on which the class is checked in and added up. */
    private boolean first() {
        return shown.judging().judge() == 1;
    }

    private Line line(Optional<Entrant> entrant) {
        return new Line(
                entrant.map(Entrant::number),
                entrant.map(each -> shown.beside() == Beside.WHOLE ? each.name() : each.initialed()),
                entrant.flatMap(shown::nameOf),
                entrant.map(Entrant::rabbit),
                entrant.map(Entrant::breed),
                entrant.flatMap(Entrant::ear));
    }

    private static List<Lines> pages(List<Line> all, int onTheFirst, int onOthers) {
        List<Lines> pages = new ArrayList<>();
        int from = 0;
        do {
            int end = Math.min(all.size(), from + (from == 0 ? onTheFirst : onOthers));
            pages.add(new Lines(all.subList(from, end)));
            from = end;
        } while (from < all.size());
        return pages;
    }

    private List<Seal> seals() {
        return IntStream.range(0, sets.size())
                .mapToObj(index -> new Seal(
                        sets.get(index).letter(),
                        index == 0 ? shown.grids() : 1,
                        USES.get(Math.min(index, USES.size() - 1))))
                .toList();
    }

    private List<Content> contents(int checkIn, int order, int tally) {
        int sheets = shown.sheets().size();
        List<Content> contents = new ArrayList<>();
        contents.add(
                new Content(checkIn, first() ? "check-in list, for the clerk" : "list of the class, for the clerk"));
        contents.add(new Content(order, "order of showing"));
        if (shown.scored()) {
            contents.add(new Content(sheets, counted(sheets, "score sheet") + ": " + whose()));
            if (setting == Setting.ORDINARY) {
                contents.add(new Content(shown.grids(), counted(shown.grids(), "grid") + " of ten contestants"));
            }
            int questions = seals().stream().mapToInt(Seal::pages).sum();
            contents.add(
                    new Content(questions + 1, counted(sets.size(), "question set") + ", sealed under their own page"));
        } else {
            contents.add(new Content(
                    (sheets + 1) / 2,
                    counted(sheets, "slip") + (setting == Setting.ORDINARY ? " of half a page: " : ": ") + whose()));
            contents.add(new Content(sets.size(), "questions for a kind talk, without points"));
        }
        if (shown.ranked()) {
            contents.add(new Content(1, "call-back list"));
        }
        if (tally > 0) {
            contents.add(new Content(tally, shown.judging().judges() > 1 ? "tally of both judges" : "tally"));
        }
        return contents;
    }

    /** {@code 4 contestants, 1 spare}. */
    private String whose() {
        List<String> parts = new ArrayList<>();
        if (!shown.entrants().isEmpty()) {
            int copies = shown.amounts().copies();
            parts.add(counted(shown.entrants().size(), "contestant")
                    + (copies > 1 ? ", " + CountingWord.of(copies) + " each" : ""));
        }
        if (shown.amounts().open() > 0) {
            parts.add(shown.amounts().open() + " to fill in");
        }
        parts.add(shown.amounts().spare() + " spare");
        return String.join(", ", parts);
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
