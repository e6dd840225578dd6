package hutchleaf.sheet;

/** Counts sheets. Whole numbers throughout, so that no sheet is won or lost by rounding. */
public final class PaperCount {
    /** Sheets in a ream (ISO 4046-3, from memory). */
    public static final int REAM = 500;

    /** A saddle-stitched booklet has four pages on each sheet, so its pages are a multiple of four. */
    private static final int BOOKLET_PAGES = 4;

    private PaperCount() {}

    /** Sheets of a booklet that is folded in the middle: 5 pages take 2. */
    public static int booklet(int pages) {
        return up(pages, BOOKLET_PAGES);
    }

    /** Pages of a booklet that stay empty: of 5 pages 3. */
    public static int blankPages(int pages) {
        return booklet(pages) * BOOKLET_PAGES - pages;
    }

    /** Sheets of cards, the last with empty places where the deck does not fill it. */
    public static int cards(int cards, int aSheet) {
        return up(cards, aSheet);
    }

    /** Places on the last sheet of cards that stay empty. */
    public static int emptyPlaces(int cards, int aSheet) {
        return cards(cards, aSheet) * aSheet - cards;
    }

    /** Sheets to lay aside for misprints: so many in a hundred, the part of a sheet counted whole. */
    public static int spare(int sheets, int percent) {
        return Math.toIntExact(((long) notNegative(sheets) * notNegative(percent) + 99) / 100);
    }

    /** Packs to buy. */
    public static int packs(int sheets, int aPack) {
        return up(sheets, aPack);
    }

    private static int up(int things, int size) {
        if (size < 1) {
            throw new IllegalArgumentException(size + " to a sheet or a pack");
        }
        return (notNegative(things) + size - 1) / size;
    }

    private static int notNegative(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("a count of " + number);
        }
        return number;
    }
}
