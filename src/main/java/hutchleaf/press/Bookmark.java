package hutchleaf.press;

import java.util.List;
import java.util.OptionalInt;

/**
 * A line of the outline.
 *
 * @param open whether what stands below it is shown
 * @param page the number of the page's object within its part
 * @param view where on the page, as a destination gives it after the page: {@code /XYZ null 749 null}
 * @param tag the number of the tag it belongs to, within its part
 */
record Bookmark(String title, boolean open, int page, String view, OptionalInt tag, List<Bookmark> below) {
    Bookmark {
        below = List.copyOf(below);
    }

    /** How many lines it and what is shown below it take. */
    int shown() {
        return 1 + (open ? allShown(below) : 0);
    }

    static int allShown(List<Bookmark> bookmarks) {
        return bookmarks.stream().mapToInt(Bookmark::shown).sum();
    }
}
