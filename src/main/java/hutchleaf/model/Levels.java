package hutchleaf.model;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A run of neighbouring levels, both ends included. */
public record Levels(Level from, Level to) {
    public static final Levels ALL = new Levels(Level.PRIMARY, Level.SENIOR);

    private static final Pattern FORM =
            Pattern.compile("(?:from )?(?<from>[a-z]+)(?<only> only)?(?: to (?<to>[a-z]+))?|to (?<upto>[a-z]+)");

    public Levels {
        if (from.compareTo(to) > 0) {
            throw new IllegalArgumentException(from + " comes after " + to);
        }
    }

    /**
     * Reads the words an author puts in a heading's brackets: {@code from junior}, {@code primary only},
     * {@code junior to intermediate}, {@code to junior}. A level alone means from it up.
     *
     * @return empty when the words are of another kind
     */
    public static Optional<Levels> parse(String words) {
        Matcher form = FORM.matcher(words);
        if (!form.matches()) {
            return Optional.empty();
        }
        if (form.group("upto") != null) {
            return Level.of(form.group("upto")).map(to -> new Levels(Level.PRIMARY, to));
        }
        Optional<Level> from = Level.of(form.group("from"));
        if (form.group("only") != null) {
            return form.group("to") == null ? from.map(level -> new Levels(level, level)) : Optional.empty();
        }
        Optional<Level> to = form.group("to") == null ? Optional.of(Level.SENIOR) : Level.of(form.group("to"));
        return from.flatMap(
                first -> to.filter(last -> first.compareTo(last) <= 0).map(last -> new Levels(first, last)));
    }

    public boolean holds(Level level) {
        return from.compareTo(level) <= 0 && level.compareTo(to) <= 0;
    }

    public boolean overlaps(Levels other) {
        return from.compareTo(other.to) <= 0 && other.from.compareTo(to) <= 0;
    }

    public boolean within(Levels wider) {
        return wider.holds(from) && wider.holds(to);
    }

    @Override
    public String toString() {
        if (from == to) {
            return from.word() + " only";
        }
        return to == Level.SENIOR ? "from " + from.word() : from.word() + " to " + to.word();
    }
}
