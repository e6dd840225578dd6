package hutchleaf.sheet;

/**
 * One file to print.
 *
 * @param pages of one copy
 * @param after what is done with the sheets when they are printed: fold, cut, staple
 */
public record PrintJob(String name, int pages, Sides sides, Stock stock, int copies, String after) {
    public PrintJob {
        if (pages < 0 || copies < 0) {
            throw new IllegalArgumentException(name + ": " + pages + " pages, " + copies + " copies");
        }
    }

    /** Sheets of one copy. */
    public int sheetsEach() {
        return sides.sheets(pages);
    }

    /** Sheets of all copies. */
    public int sheets() {
        return Math.multiplyExact(sheetsEach(), copies);
    }

    /** Sides that the printer fills for all copies. */
    public int printedPages() {
        return Math.multiplyExact(pages, copies);
    }
}
