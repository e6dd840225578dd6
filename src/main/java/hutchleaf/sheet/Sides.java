package hutchleaf.sheet;

/** How many sides of a sheet a printer fills. */
public enum Sides {
    ONE,
    TWO;

    /** Sheets that so many pages take: 0 pages 0, and with two sides 1 page 1 sheet. */
    public int sheets(int pages) {
        return switch (this) {
            case ONE -> pages;
            case TWO -> (pages + 1) / 2;
        };
    }
}
