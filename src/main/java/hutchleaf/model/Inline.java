package hutchleaf.model;

import java.util.List;

/** A run of text inside a paragraph, a list item, a heading or a cell: plain, strong, spoken, a link or a blank. */
public sealed interface Inline {
    record Text(String text) implements Inline {}

    record Strong(List<Inline> inside) implements Inline {
        public Strong {
            inside = List.copyOf(inside);
        }
    }

    record Emphasis(List<Inline> inside) implements Inline {
        public Emphasis {
            inside = List.copyOf(inside);
        }
    }

    /**
     * A link to another topic.
     *
     * @param topic its path from the content root, for example {@code health/sore-hocks.md}
     */
    record Link(String topic, List<Inline> inside) implements Inline {
        public Link {
            inside = List.copyOf(inside);
        }
    }

    /**
     * A gap that each edition fills.
     *
     * @param name what stands between the braces, for example {@code rabbit.eye colour}
     */
    record Blank(String name) implements Inline {}

    /** One result for each kind of run; a new kind fails to compile wherever it matters. */
    interface Cases<R> {
        R text(Text text);

        R strong(Strong strong);

        R emphasis(Emphasis emphasis);

        R link(Link link);

        R blank(Blank blank);
    }

    default <R> R match(Cases<R> cases) {
        if (this instanceof Text text) {
            return cases.text(text);
        } else if (this instanceof Strong strong) {
            return cases.strong(strong);
        } else if (this instanceof Emphasis emphasis) {
            return cases.emphasis(emphasis);
        } else if (this instanceof Link link) {
            return cases.link(link);
        }
        return cases.blank((Blank) this);
    }
}
