package hutchleaf.sheet;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads what a leader measured: {@code scale-x, scale-y, offset-x, offset-y}, percent and millimetres. */
public final class PrinterNumbers {
    private static final List<String> NAMES = List.of("scale-x", "scale-y", "offset-x", "offset-y");
    private static final int SCALES = 2;

    /** Word processors make a minus sign of a hyphen. */
    private static final char MINUS = '\u2212';

    private PrinterNumbers() {}

    /**
     * The numbers as a correction; empty where a problem was added.
     *
     * @param text four numbers with commas between them, a point within
     * @param shown how the problem shows them, for example {@code printer: 100, 100, 0}
     */
    public static Optional<Correction> read(String text, String shown, Place at, Problems problems) {
        List<String> words = Arrays.stream(text.replace(MINUS, '-').split(",", -1))
                .map(String::strip)
                .toList();
        if (words.size() != NAMES.size()
                || !words.stream().allMatch(word -> word.matches("[-+]?\\d{1,4}(\\.\\d{1,4})?"))) {
            problems.add(
                    at,
                    "cannot read '" + shown + "'",
                    "write four numbers: scale-x, scale-y in per cent, offset-x, offset-y in mm, as in 99.2, 99.5, 0.5, -1");
            return Optional.empty();
        }
        List<Double> numbers = words.stream().map(Double::valueOf).toList();
        for (int i = 0; i < numbers.size(); i++) {
            double number = numbers.get(i);
            if (i < SCALES ? !Correction.scale(number) : !Correction.offset(Length.mm(number))) {
                problems.add(
                        at,
                        "'" + shown + "' has " + NAMES.get(i) + " " + words.get(i) + ", not " + range(i),
                        "print the sheet of 'hutchleaf ruler' at 100 % and measure again");
                return Optional.empty();
            }
        }
        return Optional.of(
                new Correction(numbers.get(0), numbers.get(1), Length.mm(numbers.get(2)), Length.mm(numbers.get(3))));
    }

    private static String range(int number) {
        double most = Correction.MOST_OFFSET.mm();
        return number < SCALES
                ? String.format(Locale.ROOT, "%.0f to %.0f", Correction.LEAST_SCALE, Correction.MOST_SCALE)
                : String.format(Locale.ROOT, "-%.0f to %.0f", most, most);
    }
}
