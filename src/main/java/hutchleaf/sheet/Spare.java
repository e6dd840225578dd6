package hutchleaf.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How many sheets are laid aside beyond those that are needed. */
public sealed interface Spare {
    /** As a user writes it: {@code 10%} or {@code 2}. */
    Pattern FORM = Pattern.compile("(?<number>\\d{1,3})\\s*(?<share>%?)");

    /** Spare sheets for so many. */
    int of(int sheets);

    /** So many in a hundred, 0 to 100; the part of a sheet is counted whole. */
    record Share(int percent) implements Spare {
        @Override
        public int of(int sheets) {
            return PaperCount.spare(sheets, percent);
        }
    }

    /** A number of sheets, however many are needed. */
    record Sheets(int count) implements Spare {
        @Override
        public int of(int sheets) {
            return count;
        }
    }

    /** Reads {@code 10%} or {@code 2}; empty when it is neither, or more than a hundred. */
    static Optional<Spare> read(String words) {
        Matcher form = FORM.matcher(words.strip());
        if (!form.matches()) {
            return Optional.empty();
        }
        int number = Integer.parseInt(form.group("number"));
        return Optional.<Spare>of(form.group("share").isEmpty() ? new Sheets(number) : new Share(number))
                .filter(spare -> number <= 100);
    }
}
