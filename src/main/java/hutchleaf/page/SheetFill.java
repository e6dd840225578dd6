package hutchleaf.page;

import hutchleaf.page.JudgedClass.Entrant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** What is written into one contestant's places beforehand; all empty on a sheet that is filled in by hand. */
record SheetFill(Optional<Integer> number, Optional<String> name, Optional<String> rabbit) {
    static final SheetFill BLANK = new SheetFill(Optional.empty(), Optional.empty(), Optional.empty());

    /** Letters of 10 pt on the line of 52 mm for a name, and on the line of 94 mm for rabbit and breed. */
    private static final int NAME_LETTERS = 28;

    private static final int RABBIT_LETTERS = 50;

    /** Letters of 10 pt in a column of the grid. */
    private static final int COLUMN_LETTERS = 10;

    /** As a sheet for one contestant has it: {@code Cocoa, Havana}. */
    static SheetFill sheet(JudgedClass shown, Optional<Entrant> entrant) {
        return entrant.map(each -> new SheetFill(
                        Optional.of(each.number()),
                        shown.nameOf(each).map(name -> Shortened.to(name, NAME_LETTERS)),
                        rabbit(shown, each.rabbit() + ", " + each.breed())
                                .map(rabbit -> Shortened.to(rabbit, RABBIT_LETTERS))))
                .orElse(BLANK);
    }

    /** As half a page for the youngest has it: the rabbit's name alone. */
    static SheetFill slip(JudgedClass shown, Optional<Entrant> entrant) {
        return entrant.map(each -> new SheetFill(
                        Optional.of(each.number()),
                        shown.nameOf(each).map(name -> Shortened.to(name, NAME_LETTERS)),
                        rabbit(shown, each.rabbit())))
                .orElse(BLANK);
    }

    /** As a column of the grid has it: no whole name has room there. */
    static SheetFill column(JudgedClass shown, Optional<Entrant> entrant) {
        return entrant.map(each -> new SheetFill(
                        Optional.of(each.number()),
                        shown.nameOf(each)
                                .map(name -> each.initialed().length() > COLUMN_LETTERS
                                        ? each.initials()
                                        : each.initialed()),
                        Optional.empty()))
                .orElse(BLANK);
    }

    static List<SheetFill> blank(int count) {
        return Collections.nCopies(count, BLANK);
    }

    private static Optional<String> rabbit(JudgedClass shown, String words) {
        return Optional.of(words).filter(found -> shown.beside().showsRabbit());
    }
}
