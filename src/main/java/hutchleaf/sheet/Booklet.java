package hutchleaf.sheet;

import hutchleaf.sheet.CardMaking.Axis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A booklet of half-sheet pages: what stands on each side of each landscape sheet, and how far pages move for the paper's
 * thickness. Pages count from 1; those beyond the last are empty.
 *
 * @param sides left and right page of each side, in the order in which they are printed
 * @param pages of the text, without the empty ones
 */
public record Booklet(Binding binding, List<Side> sides, int pages) {
    /** How the sheets become a booklet. */
    public enum Binding {
        /**
         * Both sides printed, the backs turned over the short edge; sheets nested, folded once, stapled through the fold
         * (saddle stitch).
         */
        NESTED(4),
        /**
         * One side printed; each sheet folded by itself with its print outwards, stacked with the folds at the outer edge,
         * stapled along the open edges. Common practice, no source.
         */
        STACKED(2);

        private final int pagesOfASheet;

        Binding(int pagesOfASheet) {
            this.pagesOfASheet = pagesOfASheet;
        }

        public int pagesOfASheet() {
            return pagesOfASheet;
        }

        /** The line on which a printer turns every second side, a back; empty where all sides are fronts. */
        public Optional<Axis> backs() {
            return switch (this) {
                case NESTED -> Optional.of(Axis.UPRIGHT);
                case STACKED -> Optional.empty();
            };
        }
    }

    /**
     * One side of a sheet, held sideways.
     *
     * @param sheet 1 for the outermost sheet of a nested booklet, or for the first of a stack
     * @param left page at the left; empty where nothing is printed
     */
    public record Side(int sheet, OptionalInt left, OptionalInt right) {}

    public Booklet {
        sides = List.copyOf(sides);
    }

    /**
     * The sheets of so many pages: nested, front {@code n-2i, 1+2i} and back {@code 2+2i, n-1-2i} of sheet i from 0, where n
     * is rounded up to a multiple of four (PNW BOCES booklet guide; public listings of 4 to 16 pages); stacked, the pages
     * two by two.
     *
     * @throws IllegalArgumentException when there is no page
     */
    public static Booklet of(int pages, Binding binding) {
        if (pages < 1) {
            throw new IllegalArgumentException("a booklet of " + pages + " pages");
        }
        int each = binding.pagesOfASheet();
        int sheets = (pages + each - 1) / each;
        int places = sheets * each;
        List<Side> sides = new ArrayList<>();
        for (int sheet = 0; sheet < sheets; sheet++) {
            int first = 2 * sheet + 1;
            switch (binding) {
                case NESTED -> {
                    sides.add(side(sheet, places + 1 - first, first, pages));
                    sides.add(side(sheet, first + 1, places - first, pages));
                }
                case STACKED -> sides.add(side(sheet, first, first + 1, pages));
            }
        }
        return new Booklet(binding, sides, pages);
    }

    private static Side side(int sheet, int left, int right, int pages) {
        return new Side(sheet + 1, page(left, pages), page(right, pages));
    }

    private static OptionalInt page(int page, int pages) {
        return page <= pages ? OptionalInt.of(page) : OptionalInt.empty();
    }

    public int sheets() {
        return sides.size() * 2 / binding.pagesOfASheet();
    }

    /** Pages that stay empty, at the end. */
    public int blanks() {
        return sheets() * binding.pagesOfASheet() - pages;
    }

    /**
     * How far the pages of a sheet move towards the fold: the sheets round it push it outwards by their thickness (the
     * nested form of a prepress manual's shingling sum). Nothing for a stack.
     *
     * @param sheet from 1, the outermost
     */
    public Length creep(int sheet, Grammage paper) {
        return switch (binding) {
            case NESTED -> Caliper.of(paper).times(sheet - 1);
            case STACKED -> Length.ZERO;
        };
    }
}
