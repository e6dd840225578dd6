package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.problem.Problems;
import java.util.List;

/** A Markdown file that holds tables of data; prose around them is for whoever edits it. */
final class DataFile {
    private static final List<String> KEYS = List.of("title", "sources");

    private DataFile() {}

    /**
     * Rows of one table of the file.
     *
     * @param index which table, from 0
     */
    static List<Table.Row> table(MarkdownFile file, int index, List<String> columns, Problems problems) {
        file.front().allowOnly(KEYS, problems);
        List<Block.Table> tables = file.lead().stream()
                .filter(Block.Table.class::isInstance)
                .map(Block.Table.class::cast)
                .toList();
        if (tables.size() <= index) {
            problems.add(file.at(), "a table is missing", "add one with the head: " + String.join(" | ", columns));
            return List.of();
        }
        return Table.rows(tables.get(index), columns, problems);
    }
}
