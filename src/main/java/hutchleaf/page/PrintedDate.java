package hutchleaf.page;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;

/** Dates as a reader of English reads them. */
final class PrintedDate {
    private PrintedDate() {}

    /** {@code Saturday 8 August 2026}. */
    static String whole(LocalDate date) {
        return date.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + plain(date);
    }

    /** {@code 8 August 2026}. */
    static String plain(LocalDate date) {
        return date.getDayOfMonth() + " " + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " "
                + date.getYear();
    }

    /** {@code 8 Aug}. */
    static String small(LocalDate date) {
        return date.getDayOfMonth() + " " + date.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }
}
