package hutchleaf.club;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The cells of one row by column. Reading one reports what is wrong with it. */
record Cells(Header header, List<String> cells, Place at, Problems problems) {
    private static final Set<String> YES = Set.of("yes", "y", "true", "1");
    private static final Set<String> NO = Set.of("no", "n", "false", "0");

    Cells {
        cells = List.copyOf(cells);
    }

    /** Every run of spaces, line ends and signs that cannot be seen as one space; none at the ends. */
    static String tidy(String cell) {
        return cell.replaceAll("[\\s\\p{Cntrl}\\p{Z}]+", " ").strip();
    }

    /** The same row, reporting elsewhere. */
    Cells reportingTo(Problems other) {
        return new Cells(header, cells, at, other);
    }

    boolean has(Column column) {
        return !text(column).isEmpty();
    }

    /** The cell's text; empty where it or its column is missing. */
    String text(Column column) {
        int index = header.columns().getOrDefault(column, Integer.MAX_VALUE);
        return index < cells.size() ? tidy(cells.get(index)) : "";
    }

    /** The cell's text, which has to be there. */
    String need(Column column) {
        String text = text(column);
        if (text.isEmpty()) {
            error("no '" + column.word() + "' in this row", "fill the cell");
        }
        return text;
    }

    /** A whole number between bounds, both included. */
    Optional<Integer> whole(Column column, int least, int most) {
        String text = text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.matches("\\d{1,3}")) {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return Optional.of(number);
            }
        }
        unreadable(column, "write a whole number from " + least + " to " + most);
        return Optional.empty();
    }

    Optional<Boolean> yesOrNo(Column column) {
        String text = text(column).toLowerCase(Locale.ROOT);
        if (YES.contains(text) || NO.contains(text)) {
            return Optional.of(YES.contains(text));
        }
        if (!text.isEmpty()) {
            unreadable(column, "write yes or no");
        }
        return Optional.empty();
    }

    void unreadable(Column column, String mend) {
        error("'" + column.word() + "' is '" + text(column) + "'", mend);
    }

    void error(String what, String mend) {
        problems.add(at, what, mend);
    }

    void warn(String what, String mend) {
        problems.warn(at, what, mend);
    }
}
