package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hutchleaf booklet}: the lean guide of a level, as pages to read and as sheets to fold. */
@Command(
        name = "booklet",
        mixinStandardHelpOptions = true,
        description = "Prints a lean guide of half-sheet pages: a file to read, and one of sheets to fold and staple.",
        footer = {"", "Example:", "  hutchleaf booklet --level junior --paper a4 --out print"})
final class BookletCommand implements Callable<Integer> {
    private static final double LEAST_WEIGHT = 50;
    private static final double MOST_WEIGHT = 200;

    private final PrintWriter out;
    private final PrintWriter err;

    @Option(
            names = "--level",
            paramLabel = "LEVEL",
            description = "primary, junior, intermediate or senior (default: all four)")
    private @Nullable Level level;

    @Option(names = "--out", paramLabel = "DIR", description = "where the PDFs go (default: ${DEFAULT-VALUE})")
    private Path folder = Path.of("out");

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: letter)")
    private Paper paper = Paper.LETTER;

    @Option(
            names = "--weight",
            paramLabel = "GRAMS",
            description = "of a square metre of your paper, 50 to 200: inner pages move by its thickness"
                    + " (default: ${DEFAULT-VALUE})")
    private double weight = 80;

    @Option(
            names = "--sides",
            paramLabel = "SIDES",
            description =
                    "short-edge (both sides, turned over the short edge, nested) or one (one side, each sheet folded"
                            + " by itself) (default: ${DEFAULT-VALUE})")
    private BookletSides sides = BookletSides.SHORT_EDGE;

    @Mixin
    private SpellingOption spelling = new SpellingOption();

    @Option(names = "--content", paramLabel = "DIR", description = "a content tree of your own")
    private @Nullable Path content;

    @Option(names = "--templates", paramLabel = "DIR", description = "templates of your own")
    private @Nullable Path templates;

    @Option(names = "--pictures", description = "adds pictures of all pages, to look at before you print")
    private boolean pictures;

    BookletCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<String> wrong =
                Stream.of(missing(), wrongWeight()).flatMap(Optional::stream).findFirst();
        if (wrong.isPresent()) {
            err.println(wrong.get());
            return Exit.WRONG_ARGUMENTS;
        }
        List<Level> levels = Optional.ofNullable(level).map(List::of).orElseGet(() -> Arrays.asList(Level.values()));
        return new BookletRun(
                        new BookletRun.Request(
                                levels,
                                spelling.chosen().orElse(Club.Spelling.UK),
                                folder,
                                new BookletSheets(paper, new Grammage(weight), sides.binding()),
                                Optional.ofNullable(content),
                                Optional.ofNullable(templates),
                                Outputs.Pictures.when(pictures)),
                        out,
                        err)
                .run();
    }

    private Optional<String> missing() {
        return Stream.of(Optional.ofNullable(content), Optional.ofNullable(templates))
                .flatMap(Optional::stream)
                .filter(path -> !Files.isDirectory(path))
                .findFirst()
                .map(path -> path + ": there is no such folder; name one that is there");
    }

    private Optional<String> wrongWeight() {
        return weight >= LEAST_WEIGHT && weight <= MOST_WEIGHT
                ? Optional.empty()
                : Optional.of(
                        "--weight " + weight + ": no paper to fold weighs that; write 50 to 200, office paper has 80");
    }
}
