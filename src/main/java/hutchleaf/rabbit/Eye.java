package hutchleaf.rabbit;

import hutchleaf.model.Level;
import java.util.Optional;

/**
 * An eye as the colour table gives it, where it gives one colour.
 *
 * @param colour {@code dark brown}
 * @param detail what stands in brackets behind it: {@code ruby cast allowed}; may be empty
 */
record Eye(String colour, String detail) {
    private static final String PREFERRED = " preferred";
    private static final String RUBY_PUPIL = "pupil ruby red";

    /** Reads a cell. Empty where the colour depends on a base, on a pattern or on what is seen. */
    static Optional<Eye> read(String cell) {
        String first = cell.split(";", -1)[0].strip();
        if (first.endsWith(PREFERRED)) {
            return Optional.of(
                    new Eye(first.substring(0, first.length() - PREFERRED.length()), "some breeds allow others"));
        }
        if (!first.equals(cell) || cell.startsWith("as ") || cell.contains(" one of ")) {
            return Optional.empty();
        }
        int bracket = cell.indexOf(" (");
        return Optional.of(
                bracket < 0
                        ? new Eye(cell, "")
                        : new Eye(cell.substring(0, bracket), cell.substring(bracket + 2, cell.length() - 1)));
    }

    /** As it is said: {@code pink, with a ruby red pupil}, and for primary {@code pink}. */
    String words(Level level) {
        return level != Level.PRIMARY && detail.endsWith(RUBY_PUPIL) ? colour + ", with a ruby red pupil" : colour;
    }

    /** What stands behind the name of the table where the eye has more to it. */
    String remark() {
        return detail.isEmpty() || detail.endsWith(RUBY_PUPIL) ? "" : ": " + detail;
    }
}
