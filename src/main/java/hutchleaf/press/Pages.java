package hutchleaf.press;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Takes pages out of a finished document. */
public final class Pages {
    private Pages() {}

    /**
     * Some of a document's pages as a document of its own, PDF/UA-1 too: with its title and language, their tags, the
     * links among them and the bookmarks that lead to them. What led to another page is plain text.
     *
     * @param numbers 1-based; they come in the document's order
     * @throws IllegalArgumentException when there are none, or when the document has no such page
     */
    public static Printed only(Printed printed, List<Integer> numbers) {
        TreeSet<Integer> kept = new TreeSet<>(numbers);
        if (kept.isEmpty() || kept.first() < 1 || kept.last() > printed.pages()) {
            throw new IllegalArgumentException("pages " + numbers + " of a document of " + printed.pages());
        }
        Part part = printed.part(kept);
        byte[] pdf = Binder.bind(part.contents().title(), part.contents().language(), List.of(part));
        List<Integer> order = new ArrayList<>(kept);
        Map<String, Integer> pageOf = new HashMap<>();
        printed.pageOf().forEach((id, page) -> {
            if (kept.contains(page)) {
                pageOf.put(id, order.indexOf(page) + 1);
            }
        });
        return new Printed(pdf, order.size(), pageOf);
    }
}
