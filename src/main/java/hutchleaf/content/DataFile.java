package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Words;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.Optional;

/** A Markdown file that holds tables or lists of data; prose around them is for whoever edits it. */
final class DataFile {
    static final List<String> KEYS = List.of("title", "sources");

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

    /** The items of the file's first list, which has to be there. */
    static List<Words> items(MarkdownFile file, Problems problems) {
        file.front().allowOnly(KEYS, problems);
        Optional<Block.Bullets> list = file.lead().stream()
                .filter(Block.Bullets.class::isInstance)
                .map(Block.Bullets.class::cast)
                .findFirst();
        if (list.isEmpty()) {
            problems.add(file.at(), "a list is missing", "add one, each line with - in front");
        }
        return list.map(bullets -> bullets.words().toList()).orElse(List.of());
    }
}
