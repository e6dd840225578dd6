package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
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

    @Mixin
    private WeightOption weight = new WeightOption();

    @Option(
            names = "--sides",
            paramLabel = "SIDES",
            description =
                    "short-edge (both sides, turned over the short edge, nested) or one (one side, each sheet folded"
                            + " by itself) (default: ${DEFAULT-VALUE})")
    private BookletSides sides = BookletSides.SHORT_EDGE;

    @Mixin
    private PrinterOption printer = new PrinterOption();

    @Mixin
    private SpellingOption spelling = new SpellingOption();

    @Mixin
    private final TreeOptions tree = new TreeOptions();

    @Option(names = "--pictures", description = "adds pictures of all pages, to look at before you print")
    private boolean pictures;

    BookletCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Problems problems = new Problems();
        PrinterSetting corrected = printer.chosen(problems);
        Optional<String> wrong = Stream.concat(
                        Stream.of(tree.wrong(), weight.wrong()).flatMap(Optional::stream),
                        problems.sorted().stream().map(Problem::toString))
                .findFirst();
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
                                new BookletSheets(paper, weight.of(paper), sides.binding(), corrected),
                                tree.content(),
                                tree.templates(),
                                Outputs.Pictures.when(pictures)),
                        out,
                        err)
                .run();
    }
}
