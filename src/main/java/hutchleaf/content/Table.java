package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Routine;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Tables read as data: columns by name, each row with its line. Reading a cell reports what is wrong with it. */
final class Table {
    private Table() {}

    /** The columns of a table as its head names them. */
    static List<String> columns(Block.Table block) {
        return block.head().stream().map(cell -> cell.plain().strip()).toList();
    }

    /** Rows of the table; reports columns that are missing or unknown, and gives no rows then. */
    static List<Row> rows(Block.Table block, List<String> expected, Problems problems) {
        List<String> columns = columns(block);
        String head = "its head must be: " + String.join(" | ", expected);
        expected.stream()
                .filter(column -> !columns.contains(column))
                .forEach(column -> problems.add(block.at(), "the table has no column '" + column + "'", head));
        columns.stream()
                .filter(column -> !expected.contains(column))
                .forEach(column ->
                        problems.add(block.at(), "unknown column '" + column + "'", NearMiss.mend(column, expected)));
        return columns.containsAll(expected)
                ? block.rows().stream()
                        .map(row -> new Row(columns, row, problems))
                        .toList()
                : List.of();
    }

    /** One row of a table. */
    record Row(List<String> columns, Block.Table.Row row, Problems problems) {
        Place at() {
            return row.at();
        }

        /** The cell's text; may be empty. */
        String text(String column) {
            int index = columns.indexOf(column);
            return index < row.cells().size() ? row.cells().get(index).plain().strip() : "";
        }

        /** The cell's text, which has to be there. */
        String need(String column) {
            String text = text(column);
            if (text.isEmpty()) {
                problems.add(at(), "no '" + column + "' in this row", "fill the cell");
            }
            return text;
        }

        /** The cell as a list: {@code a, b}. */
        List<String> list(String column) {
            return Arrays.stream(text(column).split(","))
                    .map(String::strip)
                    .filter(item -> !item.isEmpty())
                    .toList();
        }

        int number(String column) {
            return optionalNumber(column).orElseGet(() -> {
                if (text(column).isEmpty()) {
                    problems.add(at(), "no '" + column + "' in this row", "write a whole number");
                }
                return 0;
            });
        }

        Optional<Integer> optionalNumber(String column) {
            String text = text(column);
            if (text.matches("\\d{1,4}")) {
                return Optional.of(Integer.parseInt(text));
            }
            if (!text.isEmpty()) {
                problems.add(at(), "'" + column + "' is '" + text + "'", "write a whole number");
            }
            return Optional.empty();
        }

        List<Integer> numbers(String column) {
            return list(column).stream()
                    .filter(item -> {
                        boolean whole = item.matches("\\d{1,3}");
                        if (!whole) {
                            problems.add(at(), "'" + item + "' in '" + column + "'", "write whole numbers: 1, 2, 3");
                        }
                        return whole;
                    })
                    .map(Integer::parseInt)
                    .toList();
        }

        /** The cell as a list of stops of the routine. */
        List<Integer> stops(String column) {
            List<Integer> stops = numbers(column);
            stops.stream()
                    .filter(stop -> stop < 1 || stop > Routine.STOPS)
                    .forEach(stop -> problems.add(at(), "there is no stop " + stop, "use 1 to " + Routine.STOPS));
            return stops;
        }

        /** One of the allowed words. */
        String oneOf(String column, Collection<String> allowed) {
            String text = need(column);
            if (!text.isEmpty() && !allowed.contains(text)) {
                problems.add(at(), "'" + column + "' is '" + text + "'", NearMiss.mend(text, allowed));
            }
            return text;
        }

        Level level(String column) {
            return Level.of(oneOf(column, Level.words())).orElse(Level.PRIMARY);
        }

        Levels levels(String column) {
            return Levels.parse(need(column)).orElseGet(() -> {
                problems.add(at(), "'" + column + "' is '" + text(column) + "'", "write it as: from junior");
                return Levels.ALL;
            });
        }
    }
}
