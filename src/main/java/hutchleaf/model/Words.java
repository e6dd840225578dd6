package hutchleaf.model;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A line of text as an author wrote it: inline runs in order. */
public record Words(List<Inline> runs) {
    private static final Inline.Cases<String> PLAIN = new Inline.Cases<>() {
        @Override
        public String text(Inline.Text text) {
            return text.text();
        }

        @Override
        public String strong(Inline.Strong strong) {
            return join(strong.inside());
        }

        @Override
        public String emphasis(Inline.Emphasis emphasis) {
            return join(emphasis.inside());
        }

        @Override
        public String link(Inline.Link link) {
            return join(link.inside());
        }

        @Override
        public String blank(Inline.Blank blank) {
            return "{" + blank.name() + "}";
        }
    };

    public Words {
        runs = List.copyOf(runs);
    }

    public static Words of(String text) {
        return new Words(List.of(new Inline.Text(text)));
    }

    /** The letters alone; blanks keep their braces. */
    public String plain() {
        return join(runs);
    }

    /** Every run at any depth, outer before inner. */
    public Stream<Inline> all() {
        return deep(runs);
    }

    private static Stream<Inline> deep(List<Inline> runs) {
        return runs.stream().flatMap(run -> Stream.concat(Stream.of(run), deep(inside(run))));
    }

    private static List<Inline> inside(Inline run) {
        if (run instanceof Inline.Strong strong) {
            return strong.inside();
        } else if (run instanceof Inline.Emphasis emphasis) {
            return emphasis.inside();
        } else if (run instanceof Inline.Link link) {
            return link.inside();
        }
        return List.of();
    }

    private static String join(List<Inline> runs) {
        return runs.stream().map(run -> run.match(PLAIN)).collect(Collectors.joining());
    }
}
