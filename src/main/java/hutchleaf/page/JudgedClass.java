package hutchleaf.page;

import hutchleaf.model.Level;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A division as it shows before one judge, for the paper on that judge's clipboard.
 *
 * @param division as the club's rule set calls it
 * @param level whose score sheet is used
 * @param entrants in the order of showing
 */
public record JudgedClass(
        Show show,
        String division,
        Level level,
        Judging judging,
        Beside beside,
        List<Entrant> entrants,
        Amounts amounts) {
    /** Contestants on one grid, and boxes beside each question. */
    static final int A_GRID = 10;

    /** What the head of every page says. */
    public record Show(String club, String name, LocalDate date) {}

    /**
     * Who judges.
     *
     * @param judge 1 or 2
     * @param judges 1 or 2
     * @param placed whether members are placed against each other
     */
    public record Judging(int judge, int judges, boolean placed) {}

    /** What stands beside the contestant's number on the pages that a judge holds. */
    public enum Beside {
        /** First name and initial, rabbit and breed. */
        INITIAL,
        /** The whole name, rabbit and breed. */
        WHOLE,
        /** Rabbit and breed. */
        RABBIT,
        /** Nothing. */
        NUMBER;

        boolean showsRabbit() {
            return this != NUMBER;
        }
    }

    /** A contestant with the rabbit that is shown. */
    public record Entrant(int number, String name, String rabbit, String breed, Optional<String> ear) {
        /** First name and initial: {@code Juniper H.}; the only name where there is one. */
        String initialed() {
            int end = name.lastIndexOf(' ');
            return end < 0 ? name : name.substring(0, end) + " " + initial(name.substring(end + 1));
        }

        /** {@code J. H.}, where there is no room for more. */
        String initials() {
            return Stream.of(name.split(" "))
                    .map(Entrant::initial)
                    .reduce((one, other) -> one + " " + other)
                    .orElse("");
        }

        private static String initial(String word) {
            return word.substring(0, word.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT) + ".";
        }
    }

    /**
     * How many of what.
     *
     * @param open places without a contestant, filled in by hand, 0 or more
     * @param copies of each contestant's sheet, 1 or more
     * @param spare sheets without a contestant beyond these, 0 or more
     */
    public record Amounts(int open, int copies, int spare) {
        public Amounts {
            if (open < 0 || copies < 1 || spare < 0) {
                throw new IllegalArgumentException(open + " open, " + copies + " copies, " + spare + " spare");
            }
        }
    }

    public JudgedClass {
        entrants = List.copyOf(entrants);
    }

    /** The contestants in the order of showing, then the places filled in by hand. */
    List<Optional<Entrant>> places() {
        List<Optional<Entrant>> places = new ArrayList<>();
        entrants.forEach(entrant -> places.add(Optional.of(entrant)));
        places.addAll(Collections.nCopies(amounts.open(), Optional.empty()));
        return places;
    }

    /** Whose sheets are printed: everyone's in order, as often as copies are wanted, then the spare ones. */
    List<Optional<Entrant>> sheets() {
        List<Optional<Entrant>> sheets = new ArrayList<>();
        for (int copy = 0; copy < amounts.copies(); copy++) {
            sheets.addAll(places());
        }
        sheets.addAll(Collections.nCopies(amounts.spare(), Optional.empty()));
        return sheets;
    }

    /** Lines of a list: the places, and one for each spare sheet, since whoever gets that has to be listed. */
    List<Optional<Entrant>> lines() {
        List<Optional<Entrant>> lines = places();
        lines.addAll(Collections.nCopies(amounts.spare(), Optional.empty()));
        return lines;
    }

    /** Grids that hold all places, at least one. */
    int grids() {
        return Math.max(1, (places().size() + A_GRID - 1) / A_GRID);
    }

    /** Whether there are points at all: primary gets none. */
    boolean scored() {
        return level != Level.PRIMARY;
    }

    /** Whether there is anything to add up and to call back for: not where nobody is placed. */
    boolean ranked() {
        return scored() && judging.placed();
    }

    /** What a judge's page says of a contestant's name. */
    Optional<String> nameOf(Entrant entrant) {
        return switch (beside) {
            case INITIAL -> Optional.of(entrant.initialed());
            case WHOLE -> Optional.of(entrant.name());
            case RABBIT, NUMBER -> Optional.empty();
        };
    }
}
