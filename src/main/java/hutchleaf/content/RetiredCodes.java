package hutchleaf.content;

import hutchleaf.model.CardCode;
import hutchleaf.problem.Problems;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads {@code words/retired.md}: codes of cards that were taken out, so that no new card gets an old card's code. */
final class RetiredCodes {
    private RetiredCodes() {}

    static Set<CardCode> read(MarkdownFile file, Problems problems) {
        Set<CardCode> codes = new HashSet<>();
        for (Table.Row row : DataFile.table(file, 0, List.of("code", "was"), problems)) {
            CardCode.parse(row.need("code"))
                    .ifPresentOrElse(
                            codes::add, () -> problems.add(row.at(), "cannot read this code", "write it as 11.2"));
        }
        return codes;
    }
}
