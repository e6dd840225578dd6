package hutchleaf.press;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Binds finished documents into one: pages of any size in order, with their tags, links and bookmarks. A document that
 * is bound many times is taken apart once, as long as it is the same object; the largest of each list then costs little
 * more than copying it.
 */
public final class Merge {
    private Merge() {}

    /**
     * The bound document, PDF/UA-1 as its parts are. It has the bookmarks of each part one after another; a link leads
     * within its own part; where parts have an id in common, {@code pageOf} tells the page of the first.
     *
     * @param title what a reader's window shows, and the PDF's title
     * @param language BCP 47 tag of the whole; each part keeps its own
     * @param parts one or more, in order, as a press made them
     */
    public static Printed of(String title, String language, List<Printed> parts) {
        byte[] pdf =
                Binder.bind(title, language, parts.stream().map(Printed::part).toList());
        Map<String, Integer> pageOf = new HashMap<>();
        int before = 0;
        for (Printed part : parts) {
            for (Map.Entry<String, Integer> entry : part.pageOf().entrySet()) {
                pageOf.putIfAbsent(entry.getKey(), before + entry.getValue());
            }
            before += part.pages();
        }
        return new Printed(pdf, before, pageOf, parts);
    }
}
