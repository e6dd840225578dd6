package hutchleaf.contest;

import hutchleaf.model.Level;
import hutchleaf.model.Routine;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.ScoreSheet.Block;
import hutchleaf.model.ScoreSheet.Item;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Checks a score sheet: what cannot be printed or added up is an error, unusual weights are a warning. */
public final class ScoreCheck {
    private static final List<String> LETTERS = List.of("A", "B", "C", "D", "E", "F");

    private final ScoreSheet sheet;
    private final Problems problems;

    private ScoreCheck(ScoreSheet sheet, Problems problems) {
        this.sheet = sheet;
        this.problems = problems;
    }

    /** Every check of every sheet. */
    public static void check(List<ScoreSheet> sheets, Problems problems) {
        sheets.forEach(sheet -> {
            new ScoreCheck(sheet, problems).errors();
            warn(sheet, problems);
        });
    }

    /** Warns where a sheet's shares lie far from what cards in print give; a sheet without points is passed over. */
    public static void warn(ScoreSheet sheet, Problems problems) {
        if (sheet.total() > 0) {
            new ShareCheck(sheet, problems).warn();
        }
    }

    private void errors() {
        if (sheet.level() == Level.PRIMARY) {
            error("primary has rows", "take them out: primary gets no points but the slip of went-well.md");
        }
        blocks();
        sheet.blocks().forEach(block -> {
            positive("block " + block.letter() + ", hands", block.hands());
            positive("block " + block.letter() + ", voice", block.voice());
        });
        sheet.items().forEach(item -> positive(item.name(), item.points()));
        sheet.items().stream()
                .filter(item -> item.name().equalsIgnoreCase(QuestionMarks.ITEM))
                .forEach(this::questions);
    }

    private void blocks() {
        List<String> letters = sheet.blocks().stream().map(Block::letter).toList();
        if (!letters.equals(LETTERS)) {
            error("the blocks are " + String.join(", ", letters), "use each once, in order: " + joined(LETTERS));
        }
        List<Integer> stops =
                sheet.blocks().stream().flatMap(block -> block.stops().stream()).toList();
        for (int stop : IntStream.rangeClosed(1, Routine.STOPS).toArray()) {
            long times = stops.stream().filter(other -> other == stop).count();
            if (times != 1) {
                error("stop " + stop + " stands in " + times + " blocks", "score each stop in one");
            }
        }
        stops.stream()
                .filter(stop -> stop < 1 || stop > Routine.STOPS)
                .forEach(stop -> error("there is no stop " + stop, "use 1 to " + Routine.STOPS));
    }

    private void positive(String what, int points) {
        if (points < 1) {
            error(what + " gives " + points + " points", "give 1 or more");
        }
    }

    private void questions(Item item) {
        QuestionMarks.read(item.lookingFor())
                .ifPresentOrElse(
                        marks -> {
                            if (marks.points() != item.points()) {
                                error(
                                        "'" + item.lookingFor() + "' makes " + marks.points()
                                                + " points, its row gives " + item.points(),
                                        "make them agree");
                            }
                        },
                        () -> error(
                                "cannot read '" + item.lookingFor() + "' in the row " + item.name(),
                                "write it as: five, two points each"));
    }

    private void error(String what, String mend) {
        problems.add(sheet.at(), sheet.level().word() + ": " + what, mend);
    }

    private static String joined(List<String> words) {
        return words.stream().collect(Collectors.joining(", "));
    }
}
