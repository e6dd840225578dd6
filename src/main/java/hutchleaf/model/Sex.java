package hutchleaf.model;

import java.util.Locale;

/** A rabbit's sex, in the trade's words. */
public enum Sex {
    BUCK,
    DOE;

    /** As it is printed: {@code buck}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
