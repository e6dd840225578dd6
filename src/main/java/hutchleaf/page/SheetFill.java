package hutchleaf.page;

import hutchleaf.page.JudgedClass.Entrant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** What is written into one contestant's places beforehand; all empty on a sheet that is filled in by hand. */
record SheetFill(Optional<Integer> number, Optional<String> name, Optional<String> rabbit) {
    static final SheetFill BLANK = new SheetFill(Optional.empty(), Optional.empty(), Optional.empty());

    /** What the smallest type, 10 pt, gets onto a line of 51 mm in bold, of 93 mm, of 33 mm and into a column of 20 mm: ems. */
    private static final double NAME = 13.8;

    private static final double RABBIT = 26;
    private static final double SLIP_RABBIT = 9.2;
    private static final double COLUMN = 5.4;

    /** As a sheet for one contestant has it: {@code Cocoa, Havana}. */
    static SheetFill sheet(JudgedClass shown, Optional<Entrant> entrant) {
        return entrant.map(each -> new SheetFill(
                        Optional.of(each.number()),
                        shown.nameOf(each).map(name -> Shortened.to(name, NAME)),
                        rabbit(shown, each.rabbit() + ", " + each.breed()).map(rabbit -> Shortened.to(rabbit, RABBIT))))
                .orElse(BLANK);
    }

    /** As half a page for the youngest has it: the rabbit's name alone. */
    static SheetFill slip(JudgedClass shown, Optional<Entrant> entrant) {
        return entrant.map(each -> new SheetFill(
                        Optional.of(each.number()),
                        shown.nameOf(each).map(name -> Shortened.to(name, NAME)),
                        rabbit(shown, Shortened.to(each.rabbit(), SLIP_RABBIT))))
                .orElse(BLANK);
    }

    /** As a column of the grid has it: no whole name has room there. */
    static SheetFill column(JudgedClass shown, Optional<Entrant> entrant) {
        return entrant.map(each -> new SheetFill(
                        Optional.of(each.number()),
                        shown.nameOf(each)
                                .map(name ->
                                        Shortened.ems(each.initialed()) > COLUMN ? each.initials() : each.initialed()),
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
