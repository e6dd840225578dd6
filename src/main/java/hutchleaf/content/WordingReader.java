package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Wording;
import hutchleaf.problem.Problems;
import java.util.List;

/** Reads how words are written: the tables in {@code words/}. */
final class WordingReader {
    private WordingReader() {}

    static List<Wording.Spelling> spellings(MarkdownFile file, Problems problems) {
        return DataFile.table(file, 0, List.of("uk", "us"), problems).stream()
                .map(row -> new Wording.Spelling(row.need("uk"), row.need("us")))
                .toList();
    }

    /** The file's second table, which may be missing. */
    static List<Wording.Spelling> onlyAmerican(MarkdownFile file, Problems problems) {
        if (file.lead().stream().filter(Block.Table.class::isInstance).count() < 2) {
            return List.of();
        }
        return DataFile.table(file, 1, List.of("uk", "us"), problems).stream()
                .map(row -> new Wording.Spelling(row.need("uk"), row.need("us")))
                .toList();
    }

    static List<Wording.Form> forms(MarkdownFile file, Problems problems) {
        return DataFile.table(file, 0, List.of("write", "not"), problems).stream()
                .map(row -> new Wording.Form(row.need("write"), row.need("not")))
                .toList();
    }

    static List<String> labels(MarkdownFile file, Problems problems) {
        return DataFile.table(file, 0, List.of("label", "why"), problems).stream()
                .map(row -> row.need("label"))
                .toList();
    }

    static List<String> everyday(MarkdownFile file, Problems problems) {
        return DataFile.table(file, 0, List.of("term", "everyday sense"), problems).stream()
                .map(row -> row.need("term"))
                .toList();
    }
}
