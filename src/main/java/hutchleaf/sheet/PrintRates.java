package hutchleaf.sheet;

import java.math.BigDecimal;

/**
 * What paper costs and how fast it is printed.
 *
 * @param sparePercent sheets laid aside for misprints, in a hundred
 * @param pagesAMinute of the printer
 */
public record PrintRates(int sparePercent, Rate plain, Rate card, int pagesAMinute) {
    /**
     * One stock.
     *
     * @param price of a sheet
     * @param pack sheets that are sold together
     */
    public record Rate(BigDecimal price, int pack) {
        public Rate {
            if (price.signum() < 0 || pack < 1) {
                throw new IllegalArgumentException("price " + price + ", " + pack + " sheets a pack");
            }
        }

        /** What so many sheets cost: exact, with two decimals or as many as the price has. */
        public BigDecimal cost(int sheets) {
            BigDecimal cost = price.multiply(BigDecimal.valueOf(sheets));
            return cost.setScale(Math.max(2, cost.scale()));
        }
    }

    public PrintRates {
        if (sparePercent < 0 || pagesAMinute < 1) {
            throw new IllegalArgumentException(sparePercent + " % spare, " + pagesAMinute + " pages a minute");
        }
    }

    public Rate of(Stock stock) {
        return switch (stock) {
            case PLAIN -> plain;
            case CARD -> card;
        };
    }
}
