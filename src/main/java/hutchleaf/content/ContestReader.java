package hutchleaf.content;

import hutchleaf.model.Blueprint;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.DivisionRule.By;
import hutchleaf.model.Level;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Subject;
import hutchleaf.model.WentWell;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the tables in {@code contest/}: the score sheet, the blueprint of a question set, the divisions, primary's slip. */
final class ContestReader {
    private static final List<String> BLOCKS =
            List.of("level", "block", "name", "stops", "looking for", "hands", "voice");
    private static final List<String> ITEMS = List.of("level", "all through", "looking for", "points");
    private static final List<String> KINDS = List.of("kind", "from", "questions");
    private static final List<String> DIVISIONS =
            List.of("rule set", "division", "level", "by", "from", "to", "counted on", "competes", "source");
    private static final String OWN = "own rabbit";

    private ContestReader() {}

    static List<ScoreSheet> scoreSheets(MarkdownFile file, Problems problems) {
        Map<Level, List<ScoreSheet.Block>> blocks = new EnumMap<>(Level.class);
        Map<Level, List<ScoreSheet.Item>> items = new EnumMap<>(Level.class);
        Map<Level, Place> places = new EnumMap<>(Level.class);
        for (Table.Row row : DataFile.table(file, 0, BLOCKS, problems)) {
            Level level = row.level("level");
            places.putIfAbsent(level, row.at());
            blocks.computeIfAbsent(level, key -> new ArrayList<>())
                    .add(new ScoreSheet.Block(
                            row.need("block"),
                            row.need("name"),
                            row.stops("stops"),
                            row.need("looking for"),
                            row.number("hands"),
                            row.number("voice")));
        }
        for (Table.Row row : DataFile.table(file, 1, ITEMS, problems)) {
            items.computeIfAbsent(row.level("level"), key -> new ArrayList<>())
                    .add(new ScoreSheet.Item(row.need("all through"), row.need("looking for"), row.number("points")));
        }
        return blocks.entrySet().stream()
                .map(entry -> new ScoreSheet(
                        entry.getKey(),
                        places.getOrDefault(entry.getKey(), file.at()),
                        entry.getValue(),
                        items.getOrDefault(entry.getKey(), List.of())))
                .toList();
    }

    static Blueprint blueprint(MarkdownFile file, Problems problems) {
        List<Blueprint.Kind> kinds = new ArrayList<>();
        List<String> allowed = new ArrayList<>(Subject.folders());
        allowed.add(OWN);
        for (Table.Row row : DataFile.table(file, 0, KINDS, problems)) {
            List<Subject> subjects = row.list("from").stream()
                    .map(Subject::of)
                    .flatMap(Optional::stream)
                    .toList();
            if (subjects.size() != row.list("from").size() && !row.text("from").equals(OWN)) {
                problems.add(row.at(), "'from' is '" + row.text("from") + "'", "use: " + String.join(", ", allowed));
            }
            kinds.add(new Blueprint.Kind(row.need("kind"), subjects, row.number("questions")));
        }
        return new Blueprint(kinds);
    }

    static List<DivisionRule> divisions(MarkdownFile file, Problems problems) {
        List<DivisionRule> rules = new ArrayList<>();
        for (Table.Row row : DataFile.table(file, 0, DIVISIONS, problems)) {
            String by = row.oneOf("by", List.of("age", "grade", "experience"));
            DivisionRule.Terms terms = new DivisionRule.Terms(
                    row.need("counted on"),
                    row.oneOf("competes", List.of("yes", "no")).equals("yes"),
                    row.list("source"),
                    row.at());
            rules.add(new DivisionRule(
                    row.need("rule set"),
                    row.need("division"),
                    row.level("level"),
                    List.of("age", "grade", "experience").contains(by)
                            ? By.valueOf(by.toUpperCase(Locale.ROOT))
                            : By.AGE,
                    row.optionalNumber("from"),
                    row.optionalNumber("to"),
                    terms));
        }
        return rules;
    }

    static WentWell wentWell(MarkdownFile file, Problems problems) {
        return new WentWell(file.front().require("title", problems), file.at(), DataFile.items(file, problems));
    }
}
