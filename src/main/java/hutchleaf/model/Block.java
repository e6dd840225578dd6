package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;
import java.util.stream.Stream;

/** One block of prose: a paragraph, a list, a table or a picture. Each knows the line it starts on. */
public sealed interface Block {
    Place at();

    /** All the lines of words in the block, in reading order. */
    Stream<Words> words();

    record Paragraph(Place at, Words text) implements Block {
        @Override
        public Stream<Words> words() {
            return Stream.of(text);
        }
    }

    /** One line of a list, with the line of the file it stands on. */
    record Item(Place at, Words text) {}

    record Bullets(Place at, List<Item> items) implements Block {
        public Bullets {
            items = List.copyOf(items);
        }

        @Override
        public Stream<Words> words() {
            return items.stream().map(Item::text);
        }
    }

    record Numbered(Place at, List<Item> items) implements Block {
        public Numbered {
            items = List.copyOf(items);
        }

        @Override
        public Stream<Words> words() {
            return items.stream().map(Item::text);
        }
    }

    /**
     * A table of words.
     *
     * @param rows each as long as the head
     */
    record Table(Place at, List<Words> head, List<Row> rows) implements Block {
        /** One line of a table, with the line of the file it stands on. */
        public record Row(Place at, List<Words> cells) {
            public Row {
                cells = List.copyOf(cells);
            }
        }

        public Table {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }

        @Override
        public Stream<Words> words() {
            return Stream.concat(head.stream(), rows.stream().flatMap(row -> row.cells().stream()));
        }
    }

    /**
     * A drawing with its words.
     *
     * @param file path from the content root, for example {@code figures/eye-normal.svg}
     * @param use whether its parts are named
     * @param alt what a reader who cannot see it is told
     * @param caption short words printed beside it
     */
    record Picture(Place at, String file, Use use, String alt, String caption) implements Block {
        /** How a figure is shown. */
        public enum Use {
            PLAIN,
            LABELS
        }

        @Override
        public Stream<Words> words() {
            return Stream.empty();
        }
    }
}
