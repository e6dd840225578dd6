package hutchleaf.page;

import hutchleaf.model.Level;
import hutchleaf.page.PrintPlanData.After;
import hutchleaf.page.PrintPlanData.File;
import hutchleaf.page.PrintPlanData.MemberLine;
import hutchleaf.page.PrintPlanData.Use;
import hutchleaf.page.PrintPlanView.Black;
import hutchleaf.page.PrintPlanView.Entry;
import hutchleaf.page.PrintPlanView.Group;
import hutchleaf.page.PrintPlanView.Label;
import hutchleaf.page.PrintPlanView.LabelPage;
import hutchleaf.page.PrintPlanView.LabelRow;
import hutchleaf.page.PrintPlanView.MemberRow;
import hutchleaf.page.PrintPlanView.MemberSums;
import hutchleaf.page.PrintPlanView.Row;
import hutchleaf.page.PrintPlanView.ShowClass;
import hutchleaf.page.PrintPlanView.Step;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.Sides;
import hutchleaf.sheet.Stock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes the view of a print plan. */
final class PrintPlanPages {
    private static final int LABELS_ACROSS = 2;

    /** Rows of 32 mm under a heading, on either paper. */
    private static final int LABEL_ROWS = 7;

    private final PrintPlanData data;
    private final Paper paper;
    private final PrintSums sums;
    private final Map<String, File> byPath;

    private PrintPlanPages(PrintPlanData data, Paper paper) {
        this.data = data;
        this.paper = paper;
        this.sums = new PrintSums(data, paper);
        this.byPath = data.files().stream().collect(Collectors.toMap(File::path, Function.identity()));
    }

    static PrintPlanView of(PrintPlanData data, Paper paper) {
        return new PrintPlanPages(data, paper).view();
    }

    private PrintPlanView view() {
        List<MemberRow> rows = data.members().stream().map(this::member).toList();
        return new PrintPlanView(
                // A leader reads it: the type of the senior guide.
                Look.of(Level.SENIOR, paper),
                sums.head(),
                groups(),
                sums.sums(),
                sums.papers(),
                sums.time(),
                sums.toner(),
                steps(),
                rows,
                new MemberSums(
                        rows.stream().mapToInt(MemberRow::sheets).sum(),
                        rows.stream().mapToInt(MemberRow::cards).sum()),
                classes(),
                labels(),
                checks(),
                data.warnings());
    }

    private List<Group> groups() {
        return Arrays.stream(Use.values())
                .map(use -> new Group(data.files().stream()
                        .filter(file -> file.use() == use)
                        .map(this::row)
                        .toList()))
                .filter(group -> !group.rows().isEmpty())
                .toList();
    }

    private Row row(File file) {
        return new Row(
                file.title(),
                where(file),
                file.pages(),
                file.sides() == Sides.ONE ? "one side" : "both sides",
                file.stock() == Stock.PLAIN ? "plain paper" : "card",
                file.copies(),
                file.job().sheets(),
                key(file.after()),
                file.after().words(),
                sums.cost(file.stock(), file.job().sheets()),
                file.ink().map(ink -> new Black(PrintSums.percent(ink.mean()), PrintSums.percent(ink.highest()))));
    }

    /** The path; what tells files of one kind apart stands in the other columns. */
    private static String where(File file) {
        return file.path().split(", ", 2)[0];
    }

    private static String key(After after) {
        return after.name().toLowerCase(Locale.ROOT);
    }

    private List<Step> steps() {
        return Arrays.stream(After.values())
                .filter(after -> data.files().stream().anyMatch(file -> file.after() == after))
                .map(after -> new Step(key(after), after.words(), how(after)))
                .toList();
    }

    private static String how(After after) {
        return switch (after) {
            case STAPLE -> "Once, at the top left corner.";
            case BOOKLET ->
                "Print both sides at 100 %, turned over the short edge. Lay the sheets as they come, fold all of them once,"
                        + " cover outside, and staple twice through the fold.";
            case STACK ->
                "Print one side at 100 %. Fold each sheet by itself, printing outside. Lay them in order, page 1 on top, all"
                        + " folds at the right. Staple three times, 5 mm from the left edge.";
            case FOLD -> "Fold on the long dashed line, printing outside, then like a fan.";
            case CARDS ->
                "Fold on the dashed line, printing outside. Glue the halves together inside, right to the edges, and let"
                        + " them dry under a book. Cut on the solid lines, through both layers.";
            case CUT -> "Cut on the solid lines.";
            case BINDER -> "Punch the left edge and put it in the club’s binder.";
            case LOOSE -> "It goes into the envelope or on the clipboard as it is.";
        };
    }

    private MemberRow member(MemberLine member) {
        List<File> files = member.files().stream().map(this::file).toList();
        return new MemberRow(
                member.number(),
                member.name(),
                withLevel(member),
                files.stream().map(File::title).collect(Collectors.joining("; ")),
                files.stream().mapToInt(file -> file.job().sheetsEach()).sum(),
                member.cards(),
                files.stream().anyMatch(file -> file.after() == After.CARDS),
                files.stream().anyMatch(file -> file.after() == After.CARDS || file.after() == After.CUT));
    }

    /** The division, and its level where that has another name: the toe mark never stands without it. */
    private static String withLevel(MemberLine member) {
        String level = member.level().title();
        return member.division().equalsIgnoreCase(level)
                ? level
                : member.division() + " (" + member.level().word() + ")";
    }

    /** The data has checked that every path is in the plan. */
    private File file(String path) {
        File file = byPath.get(path);
        if (file == null) {
            throw new IllegalStateException(path);
        }
        return file;
    }

    private List<ShowClass> classes() {
        Map<String, List<MemberLine>> byDivision = data.members().stream()
                .collect(Collectors.groupingBy(MemberLine::division, LinkedHashMap::new, Collectors.toList()));
        List<ShowClass> classes = new ArrayList<>();
        byDivision.forEach((division, members) -> {
            Level level = members.get(0).level();
            classes.add(new ShowClass(
                    division,
                    level.blackToes(),
                    (division.equalsIgnoreCase(level.title()) ? "" : level.title() + ", ") + members.size()
                            + " showing",
                    members.stream()
                            .map(member -> new Entry(
                                    member.number(),
                                    member.name(),
                                    member.rabbit().name(),
                                    member.rabbit().breed(),
                                    member.rabbit().ear()))
                            .toList()));
        });
        return classes;
    }

    private List<LabelPage> labels() {
        List<Label> all = data.members().stream()
                .map(member -> new Label(
                        member.number(),
                        member.name(),
                        member.rabbit().name(),
                        withLevel(member),
                        member.level().blackToes()))
                .toList();
        List<LabelRow> rows =
                pieces(all, LABELS_ACROSS).stream().map(LabelRow::new).toList();
        return pieces(rows, LABEL_ROWS).stream().map(LabelPage::new).toList();
    }

    private static <T> List<List<T>> pieces(List<T> all, int size) {
        List<List<T>> pieces = new ArrayList<>();
        for (int from = 0; from < all.size(); from += size) {
            pieces.add(all.subList(from, Math.min(all.size(), from + size)));
        }
        return pieces;
    }

    private List<String> checks() {
        List<String> checks = new ArrayList<>();
        if (data.files().stream().anyMatch(file -> file.after() == After.CARDS)) {
            checks.add("Print one card sheet first, at full size (100 %), and fold it: fronts and backs must meet.");
        }
        if (data.files().stream().anyMatch(file -> file.sides() == Sides.TWO)) {
            checks.add("Both sides: choose “flip on long edge”, and look at one file before you print the rest.");
        }
        return checks;
    }
}
