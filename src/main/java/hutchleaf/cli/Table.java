package hutchleaf.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The short table that ends a run: file, pages, sheets, for whom. */
final class Table {
    private record Row(String file, int pages, int sheets, String whom) {}

    private final List<Row> rows = new ArrayList<>();

    void add(String file, int pages, int sheets, String whom) {
        rows.add(new Row(file, pages, sheets, whom));
    }

    void print(PrintWriter out) {
        int width = rows.stream().mapToInt(row -> row.file().length()).max().orElse(4);
        String form = "%-" + width + "s  %5s  %6s  %s%n";
        out.printf(Locale.ROOT, form, "file", "pages", "sheets", "for");
        rows.forEach(row -> out.printf(Locale.ROOT, form, row.file(), row.pages(), row.sheets(), row.whom()));
        out.printf(
                Locale.ROOT,
                form,
                "in all",
                rows.stream().mapToInt(Row::pages).sum(),
                rows.stream().mapToInt(Row::sheets).sum(),
                "");
    }
}
