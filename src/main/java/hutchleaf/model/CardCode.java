package hutchleaf.model;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A card's code, written by its author and never counted: {@code 11.2}.
 *
 * @param group the stop (1 to 16), 20 for the member's own rabbit, or the fixed code of a topic (21 and up)
 */
public record CardCode(int group, int number) implements Comparable<CardCode> {
    private static final Pattern FORM = Pattern.compile("([1-9]\\d{0,2})\\.([1-9]\\d{0,2})");
    private static final Comparator<CardCode> ORDER =
            Comparator.comparingInt(CardCode::group).thenComparingInt(CardCode::number);

    public static Optional<CardCode> parse(String text) {
        Matcher form = FORM.matcher(text);
        return form.matches()
                ? Optional.of(new CardCode(Integer.parseInt(form.group(1)), Integer.parseInt(form.group(2))))
                : Optional.empty();
    }

    @Override
    public int compareTo(CardCode other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return group + "." + number;
    }
}
