package hutchleaf.sheet;

import java.util.List;

/**
 * How much of some pages is printed black, in a printer's toner or ink.
 *
 * @param pages that were measured
 * @param black what the ink of all of them would fill, in pages of solid black
 * @param highest the share of the blackest page that is black, 0 to 1
 */
public record InkUse(int pages, double black, double highest) {
    public static final InkUse NONE = new InkUse(0, 0, 0);

    /**
     * The share of a page that is black where makers of cartridges count how many pages one lasts: about 5 %, ISO/IEC
     * 19752 and ISO/IEC 24711 and what makers state by them, from memory.
     */
    public static final double RATED_SHARE = 0.05;

    public InkUse {
        if (pages < 0 || !(black >= 0 && black <= pages) || !(highest >= 0 && highest <= 1)) {
            throw new IllegalArgumentException(pages + " pages, " + black + " black, at most " + highest);
        }
    }

    /** Adds up pages by the share of each that is black, 0 to 1. */
    public static InkUse of(List<Double> shares) {
        return shares.stream().map(share -> new InkUse(1, share, share)).reduce(NONE, InkUse::plus);
    }

    public InkUse plus(InkUse other) {
        return new InkUse(pages + other.pages, black + other.black, Math.max(highest, other.highest));
    }

    /** The share of a page that is black on average; 0 where there are no pages. */
    public double mean() {
        return pages == 0 ? 0 : black / pages;
    }

    /** How many pages as cartridges are rated by would take as much. */
    public double ratedPages() {
        return black / RATED_SHARE;
    }
}
