package hutchleaf.page;

import hutchleaf.page.RulerView.Example;
import hutchleaf.page.RulerView.Label;
import hutchleaf.page.RulerView.Line;
import hutchleaf.page.RulerView.Row;
import hutchleaf.page.RulerView.Side;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Length;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.RulerSheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.IntStream;

/** The sheet on which a leader measures what a printer does to a page. */
public final class RulerPages {
    private static final String TEMPLATE = "ruler.ftl";

    /** Rows of the table on either side of the true length, half a millimetre each. */
    private static final int ROWS = 4;

    private static final BigDecimal PERCENT = BigDecimal.valueOf(100);

    private RulerPages() {}

    /** Two pages: the two sides of one sheet. */
    public static Optional<Manuscript> of(Templates templates, Paper paper, Problems problems) {
        return templates.manuscript("Printer ruler", TEMPLATE, view(new RulerSheet(paper)), problems);
    }

    static RulerView view(RulerSheet sheet) {
        Example example = new Example(
                "198.5",
                "149",
                String.join(", ", percent("198.5", RulerSheet.LEVEL), percent("149", RulerSheet.UPRIGHT), "0.5", "-1"));
        return new RulerView(
                sheet.width().mm(),
                sheet.height().mm(),
                side(sheet.front()),
                side(sheet.back()),
                IntStream.rangeClosed(-ROWS, ROWS).mapToObj(RulerPages::row).toList(),
                example);
    }

    private static Side side(RulerSheet.Drawn drawn) {
        return new Side(
                drawn.lines().stream()
                        .map(box -> new Line(mm(box.x()), mm(box.y()), mm(box.width()), mm(box.height())))
                        .toList(),
                drawn.labels().stream()
                        .map(label -> new Label(mm(label.x()), mm(label.y()), label.text()))
                        .toList());
    }

    /** To a thousandth. */
    private static double mm(Length length) {
        return Math.rint(length.mm() * 1000) / 1000;
    }

    private static Row row(int halves) {
        String level = measured(RulerSheet.LEVEL, halves);
        String upright = measured(RulerSheet.UPRIGHT, halves);
        return new Row(level, percent(level, RulerSheet.LEVEL), upright, percent(upright, RulerSheet.UPRIGHT));
    }

    private static String measured(Length length, int halves) {
        return plain(BigDecimal.valueOf(Math.round(length.mm()))
                .add(BigDecimal.valueOf(halves).multiply(new BigDecimal("0.5"))));
    }

    /** To a tenth: half of that is 0.07 mm from the middle of a sheet to its edge. */
    private static String percent(String measured, Length length) {
        return plain(new BigDecimal(measured)
                .multiply(PERCENT)
                .divide(BigDecimal.valueOf(Math.round(length.mm())), 1, RoundingMode.HALF_UP));
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}
