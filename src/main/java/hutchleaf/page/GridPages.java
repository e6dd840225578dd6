package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Routine;
import hutchleaf.model.ScoreSheet;
import hutchleaf.page.GridView.Frame;
import hutchleaf.page.GridView.Grid;
import hutchleaf.page.GridView.Item;
import hutchleaf.page.GridView.Row;
import hutchleaf.page.ScoreView.Points;
import hutchleaf.page.ScoreView.Sums;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes the view of a grid for ten contestants. */
final class GridPages {
    /** Letters of 10.5 pt bold that stand beside the points of a block. */
    private static final int NAME_LETTERS = 17;

    /** Letters of 10 pt that stand under a block's name. */
    private static final int LINE_LETTERS = 27;

    private static final int LINES = 2;
    private static final String COSTS_NOTHING = "costs nothing";

    private GridPages() {}

    /** One that is filled in by hand. */
    static GridView of(Edition edition, ScoreSheet sheet, Paper paper) {
        return view(edition, sheet, paper, Optional.empty(), List.of(new Grid(SheetFill.blank(JudgedClass.A_GRID))));
    }

    /** As many as a class needs, with its contestants in their columns. */
    static GridView of(Edition edition, ScoreSheet sheet, Paper paper, JudgedClass shown) {
        List<SheetFill> columns = new ArrayList<>();
        shown.places().forEach(entrant -> columns.add(SheetFill.column(shown, entrant)));
        columns.addAll(SheetFill.blank(shown.grids() * JudgedClass.A_GRID - columns.size()));
        List<Grid> grids = IntStream.range(0, shown.grids())
                .mapToObj(grid -> new Grid(columns.subList(grid * JudgedClass.A_GRID, (grid + 1) * JudgedClass.A_GRID)))
                .toList();
        return view(edition, sheet, paper, Optional.of(JudgeHead.of(shown).onAForm()), grids);
    }

    private static GridView view(
            Edition edition, ScoreSheet sheet, Paper paper, Optional<JudgeHead> head, List<Grid> grids) {
        return new GridView(
                Look.of(edition.level(), paper),
                head,
                frame(paper),
                sheet.blocks().stream()
                        .map(block -> row(block, edition.library().routine()))
                        .toList(),
                sheet.items().stream()
                        .map(item -> new Item(item.name().substring(0, 2), item.name(), item.points()))
                        .toList(),
                new Sums(sheet.hands(), sheet.voice(), sheet.allThrough(), sheet.total()),
                grids);
    }

    /** Measured for each paper so that hands and voice get 10 mm each. */
    private static Frame frame(Paper paper) {
        return switch (paper) {
            case LETTER -> new Frame(279.4, 215.9, 7.2, 57, 20.2, 6.2, 14.6, 9.6, 10);
            case A4 -> new Frame(297, 210, 7, 63, 21.2, 6.6, 14.2, 9.4, 9.4);
        };
    }

    private static Row row(ScoreSheet.Block block, Routine routine) {
        List<String> lines = new ArrayList<>(stops(block, routine));
        Arrays.stream(block.lookingFor().split(";"))
                .map(String::strip)
                .filter(part -> part.contains(COSTS_NOTHING))
                .limit(Math.max(0, LINES - lines.size()))
                .forEach(lines::add);
        return new Row(block.letter(), shortened(block.name()), lines, new Points(block.hands(), block.voice()));
    }

    /** The first and the last part of a name that is too long for the label: {@code Arrive, introduce}. */
    private static String shortened(String name) {
        String[] parts = name.split(", ");
        return name.length() <= NAME_LETTERS || parts.length < 3 ? name : parts[0] + ", " + parts[parts.length - 1];
    }

    /** The stops by number and short name, in as few lines as they need. */
    private static List<String> stops(ScoreSheet.Block block, Routine routine) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (int no : block.stops()) {
            String name = routine.station(no).shortName().replaceAll(",.*", "").toLowerCase(Locale.ROOT);
            String stop = no + " " + name;
            if (line.length() > 0 && line.length() + 2 + stop.length() > LINE_LETTERS) {
                lines.add(line + ",");
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : ", ").append(stop);
        }
        lines.add(line.toString());
        return lines;
    }
}
