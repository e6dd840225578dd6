package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.HelpWords;
import hutchleaf.model.HelpWords.Heading;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Routine;
import hutchleaf.model.Section;
import hutchleaf.model.Words;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;

/** Reads the words of the talk-through sheet and the cue card: lists, and a line for every stop of every level. */
final class HelpReader {
    private static final String STOP = "stop";
    private static final String SAY = "say to your helper";
    private static final String HELPER = "your helper does";
    private static final String LOOK = "look for";
    private static final String KEY = "key words";
    private static final List<String> COLUMNS = List.of(STOP, SAY, HELPER, LOOK, KEY);

    private final Problems problems;
    private final List<Section> sections = new ArrayList<>();
    private final List<HelpWords.Line> lines = new ArrayList<>();

    private HelpReader(Problems problems) {
        this.problems = problems;
    }

    static HelpWords read(MarkdownFile file, Routine routine, Problems problems) {
        file.front().allowOnly(DataFile.KEYS, problems);
        HelpReader reader = new HelpReader(problems);
        Siblings siblings = new Siblings(problems);
        file.parts().forEach(part -> reader.part(part, siblings));
        HelpWords words = new HelpWords(reader.sections, reader.lines);
        for (Level level : Level.values()) {
            reader.everyStop(words, level, routine, file);
        }
        return words;
    }

    private void part(Part part, Siblings siblings) {
        String heading = part.heading().text();
        Levels levels = part.heading().levels().orElse(Levels.ALL);
        siblings.note("part", heading, levels, part.at());
        sections.add(new Section(Section.Kind.PROSE, heading, levels, part.at(), part.blocks()));
        if (Heading.of(heading).isEmpty()) {
            problems.add(part.at(), "unknown heading '" + heading + "'", NearMiss.mend(heading, Heading.texts()));
        } else if (heading.equals(Heading.STOPS.text())) {
            if (part.only(Block.Table.class).isEmpty()) {
                problems.add(part.at(), "'" + heading + "' is not in its form", "write one table under it");
            }
            part.only(Block.Table.class)
                    .ifPresent(table -> Table.rows(table, COLUMNS, problems).forEach(row -> line(row, levels)));
        } else if (part.only(Block.Bullets.class).isEmpty()) {
            problems.add(
                    part.at(),
                    "'" + heading + "' is not in its form",
                    "write one list under it, each line with - in front");
        }
    }

    private void line(Table.Row row, Levels levels) {
        int stop = row.number(STOP);
        boolean twice = lines.stream()
                .anyMatch(line -> line.stop() == stop && line.levels().overlaps(levels));
        if (twice) {
            problems.add(row.at(), "stop " + stop + " stands twice", "keep one row");
        }
        lines.add(new HelpWords.Line(
                stop, levels, cell(row, SAY), cell(row, HELPER), cell(row, LOOK), row.need(KEY), row.at()));
    }

    /** The cell with its blanks. */
    private static Words cell(Table.Row row, String column) {
        row.need(column);
        int index = row.columns().indexOf(column);
        return index < row.row().cells().size() ? row.row().cells().get(index) : Words.of("");
    }

    private void everyStop(HelpWords words, Level level, Routine routine, MarkdownFile file) {
        if (routine.orders().stream().noneMatch(order -> order.levels().holds(level))) {
            return;
        }
        routine.orderFor(level).stops().stream()
                .filter(stop -> stop <= Routine.STOPS && words.line(stop, level).isEmpty())
                .forEach(stop -> problems.add(
                        file.at(),
                        "stop " + stop + " has no line for " + level.word(),
                        "add one under '" + Heading.STOPS.text() + "'"));
    }
}
