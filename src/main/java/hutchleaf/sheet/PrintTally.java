package hutchleaf.sheet;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * What a list of jobs takes.
 *
 * @param stocks one line for each stock that is used, plain first
 * @param printedPages sides that the printer fills, without misprints
 * @param minutes at the printer, the last one counted whole
 */
public record PrintTally(List<Line> stocks, int printedPages, int minutes) {
    /**
     * One stock.
     *
     * @param sheets of all jobs
     * @param spare sheets for misprints
     * @param packs to buy
     * @param grams of all sheets, the spare ones too
     * @param price of a sheet
     * @param cost of all sheets, the spare ones too
     */
    public record Line(Stock stock, int sheets, int spare, int packs, double grams, BigDecimal price, BigDecimal cost) {
        /** Sheets to lay ready. */
        public int all() {
            return sheets + spare;
        }

        public double kilograms() {
            return grams / 1000;
        }

        public double pounds() {
            return grams / Grammage.GRAMS_A_POUND;
        }
    }

    public PrintTally {
        stocks = List.copyOf(stocks);
    }

    /** Adds up jobs on one paper; each stock gets spare sheets of its own. */
    public static PrintTally of(List<PrintJob> jobs, Paper paper, PrintRates rates) {
        int pages = jobs.stream().mapToInt(PrintJob::printedPages).sum();
        return new PrintTally(
                Arrays.stream(Stock.values())
                        .filter(stock -> sheets(jobs, stock) > 0)
                        .map(stock -> line(stock, sheets(jobs, stock), paper, rates))
                        .toList(),
                pages,
                PaperCount.packs(pages, rates.pagesAMinute()));
    }

    private static int sheets(List<PrintJob> jobs, Stock stock) {
        return jobs.stream()
                .filter(job -> job.stock() == stock)
                .mapToInt(PrintJob::sheets)
                .sum();
    }

    private static Line line(Stock stock, int sheets, Paper paper, PrintRates rates) {
        int spare = PaperCount.spare(sheets, rates.sparePercent());
        int all = sheets + spare;
        PrintRates.Rate rate = rates.of(stock);
        return new Line(
                stock,
                sheets,
                spare,
                PaperCount.packs(all, rate.pack()),
                stock.grammage(paper).grams(paper, all),
                rate.price(),
                rate.cost(all));
    }

    /** Sheets of all jobs. */
    public int sheets() {
        return stocks.stream().mapToInt(Line::sheets).sum();
    }

    /** Sheets for misprints. */
    public int spare() {
        return stocks.stream().mapToInt(Line::spare).sum();
    }

    /** Sheets to lay ready. */
    public int all() {
        return sheets() + spare();
    }

    public double grams() {
        return stocks.stream().mapToDouble(Line::grams).sum();
    }

    /** Hours at the printer. */
    public double hours() {
        return minutes / 60.0;
    }

    /** What all sheets cost, the spare ones too. */
    public BigDecimal cost() {
        return stocks.stream().map(Line::cost).reduce(new BigDecimal("0.00"), BigDecimal::add);
    }
}
