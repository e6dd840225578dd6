package hutchleaf.cli;

import hutchleaf.model.Subject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Folders that tests publish from, and what stands in them. */
final class Trees {
    private static final int STOPS = 16;
    private static final int FIRST_SPARE_CODE = 900;
    private static final List<String> KEPT = List.of("words", "facts.md", "sources.md");
    private static final List<String> TABLES = List.of(
            "routine/stations.md",
            "breeds/breeds.md",
            "colours/colours.md",
            "contest/scoresheet.md",
            "contest/questions.md",
            "contest/divisions.md",
            "contest/went-well.md",
            "contest/packet.md",
            "contest/accommodation.md");

    /** No figure to label: none of the figures is copied. */
    private static final String NO_LABELS =
            "---\ntitle: Figures to label\n---\n| figure | title | from |\n|---|---|---|\n";

    private Trees() {}

    /** A folder named {@code content} inside another: the tables of the real tree, one short topic for each stop. */
    static Path small(Path inside) throws IOException {
        Path tree = inside.resolve("content");
        for (String kept : KEPT) {
            copy(Path.of("content", kept), tree.resolve(kept));
        }
        for (String table : TABLES) {
            copy(Path.of("content", table), tree.resolve(table));
        }
        Files.writeString(Files.createDirectories(tree.resolve("figures")).resolve("label-it.md"), NO_LABELS);
        for (int stop = 1; stop <= STOPS; stop++) {
            Files.writeString(tree.resolve("routine/stop-" + stop + ".md"), stop(stop));
        }
        spareQuestions(
                tree, List.of(Subject.ANATOMY, Subject.HEALTH, Subject.HANDLING, Subject.HUSBANDRY, Subject.CONTEST));
        return tree;
    }

    /** A copy of the real tree. */
    static Path whole(Path inside) throws IOException {
        Path tree = inside.resolve("content");
        copy(Path.of("content"), tree);
        return tree;
    }

    /** A copy of the real templates. */
    static Path templates(Path inside) throws IOException {
        Path templates = inside.resolve("templates");
        copy(Path.of("templates"), templates);
        return templates;
    }

    /** Every file under a folder with its bytes, by path. */
    static Map<String, byte[]> bytes(Path folder) throws IOException {
        Map<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                found.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return found;
    }

    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.filter(Files::isRegularFile).forEach(file -> {
                try {
                    Path target = to.resolve(from.relativize(file).toString());
                    Files.createDirectories(target.getParent());
                    Files.copy(file, target);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    private static String stop(int stop) {
        return """
                ---
                title: Stop %d
                station: %d
                level: primary
                sources: common practice
                ---
                ## In short
                A short line on this stop.

                ## Steps
                1. Do the first thing.
                2. Do the second thing.

                ## Caution
                Be gentle. Stop if it kicks.

                ## Say it
                I say what I see.

                ## Cards
                ### What is card one of stop %d? {%d.1 core}
                An answer.

                ## Self-test
                ### What comes first at stop %d?
                - **the first thing**
                - the second thing
                - the third thing

                The first thing comes first.
                """.formatted(stop, stop, stop, stop, stop);
    }

    /** A topic of six questions in each subject, so that no set of questions runs short. */
    private static void spareQuestions(Path tree, List<Subject> subjects) throws IOException {
        for (Subject subject : subjects) {
            Path folder = Files.createDirectories(tree.resolve(subject.folder()));
            Files.writeString(
                    folder.resolve("spare.md"), spare(subject.folder(), FIRST_SPARE_CODE + subjects.indexOf(subject)));
        }
    }

    private static String spare(String name, int code) {
        return """
                ---
                title: Spare %s
                level: primary
                code: %d
                sources: common practice
                ---
                ## In short
                A spare line.

                ## Words
                ### spare word %d
                a word to spare

                ## Judge may ask
                """.formatted(name, code, code)
                + IntStream.rangeClosed(1, 6)
                        .mapToObj(no -> """
                ### What is spare thing %d about %s?
                - a spare answer

                ### What would your own rabbit say to %d about %s? (own rabbit)
                - a spare answer

                """.formatted(no, name, no, name))
                        .collect(Collectors.joining());
    }
}
