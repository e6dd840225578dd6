package hutchleaf.club;

import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which column stands where.
 *
 * @param width how many columns the file has, those included that are not read
 */
record Header(Map<Column, Integer> columns, int width) {
    private static final Set<Column> NEEDED = Set.of(
            Column.MEMBER_NAME,
            Column.RABBIT_NAME,
            Column.BREED,
            Column.COLOUR,
            Column.SEX,
            Column.RABBIT_BIRTH_DATE,
            Column.EAR_NUMBER);

    Header {
        columns = Map.copyOf(columns);
    }

    /** How many of a line's cells name a column. */
    static long known(List<String> cells) {
        return cells.stream().flatMap(cell -> Column.of(cell).stream()).count();
    }

    /**
     * Reads the first line. A column that is not known is left out with a warning.
     *
     * @param others what the club's rule set needs beside what every roster needs
     * @return empty when a needed column is missing or one stands twice
     */
    static Optional<Header> read(List<String> cells, Place at, Set<Column> others, Problems problems) {
        Map<Column, Integer> columns = new EnumMap<>(Column.class);
        List<String> unknown = new ArrayList<>();
        Problems own = new Problems();
        for (int index = 0; index < cells.size(); index++) {
            String head = Cells.tidy(cells.get(index));
            Optional<Column> column = Column.of(head);
            if (column.isEmpty() && !head.isEmpty()) {
                unknown.add(head);
            } else if (column.isPresent() && columns.putIfAbsent(column.get(), index) != null) {
                own.add(
                        at,
                        "two columns are read as '" + column.get().word() + "'",
                        "take one out; '" + head + "' is the second");
            }
        }
        for (Column column : Column.values()) {
            if ((NEEDED.contains(column) || others.contains(column)) && !columns.containsKey(column)) {
                own.add(at, "no column '" + column.word() + "'", mend(column, unknown));
            }
        }
        if (!own.hasErrors()) {
            unknown.forEach(head -> own.warn(
                    at,
                    "the column '" + head + "' is not read",
                    NearMiss.of(head, Column.words())
                            .map(near -> "did you mean '" + near + "'?")
                            .orElse("nothing needs it; take it out if you like")));
        }
        problems.addAll(own);
        return own.hasErrors() ? Optional.empty() : Optional.of(new Header(columns, cells.size()));
    }

    private static String mend(Column column, List<String> unknown) {
        return NearMiss.of(column.word(), unknown)
                .map(near -> "rename the column '" + near + "'")
                .orElse("add it to the first line; its separators may be commas, semicolons or tabs");
    }
}
