package hutchleaf.cli;

import hutchleaf.cli.CardsOptions.Overfull;
import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardFormat;
import hutchleaf.sheet.CardMaking;
import hutchleaf.sheet.CardMaking.Turn;
import hutchleaf.sheet.CardMaking.Way;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hutchleaf cards}: flashcards in the size and the way of making that a club needs. */
@Command(
        name = "cards",
        mixinStandardHelpOptions = true,
        description = "Prints flashcards in other sizes, made in other ways, or some cards only.",
        footer = {"", "Example:", "  hutchleaf cards --level junior --format large-print --out print"})
final class CardsCommand implements Callable<Integer> {
    private static final Map<String, Way> FOLDS = Map.of("sheet", Way.FOLD_SHEET, "card", Way.FOLD_CARD);
    private static final Map<String, Way> SIDES = Map.of("long-edge", Way.LONG_EDGE, "short-edge", Way.SHORT_EDGE);
    private static final String ONE_SIDE = "one";

    private final PrintWriter out;
    private final PrintWriter err;
    private final Problems problems = new Problems();

    @Option(names = "--level", paramLabel = "LEVEL", description = "one level only (default: all)")
    private @Nullable String level;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description =
                    "small, standard, primary, index or large-print (default: primary for primary, else standard)")
    private @Nullable String format;

    @Option(
            names = "--fold",
            paramLabel = "WHAT",
            description = "sheet: fold the sheet, glue, cut; card: cut first, fold each card (default: sheet)")
    private @Nullable String fold;

    @Option(names = "--turn", paramLabel = "HOW", description = "a card turns like a page, or up (default: page)")
    private @Nullable String turn;

    @Option(
            names = "--sides",
            paramLabel = "SIDES",
            description = "one, or for two-sided printers long-edge or short-edge: how they flip (default: one)")
    private @Nullable String sides;

    @Option(names = "--cards", paramLabel = "CODE", split = ",", description = "only these, for example 11.2,4.7")
    private List<String> codes = List.of();

    @Option(names = "--topic", paramLabel = "TOPIC", description = "only this topic's: its title or its path")
    private @Nullable String topic;

    @Option(names = "--core", description = "only those to learn first")
    private boolean core;

    @Option(names = "--from-level", paramLabel = "LEVEL", description = "leaves out cards that this level had already")
    private @Nullable String since;

    @Option(names = "--strict", description = "a card that a small card cannot hold is an error")
    private boolean strict;

    @Option(names = "--out", paramLabel = "DIR", description = "where the PDFs go (default: ${DEFAULT-VALUE})")
    private Path folder = Path.of("out");

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: letter)")
    private Paper paper = Paper.LETTER;

    @Mixin
    private PrinterOption printer = new PrinterOption();

    @Mixin
    private SpellingOption spelling = new SpellingOption();

    @Mixin
    private final SaverOption saver = new SaverOption();

    @Mixin
    private final TreeOptions tree = new TreeOptions();

    @Option(names = "--pictures", description = "adds pictures of all pages, to look at before you print")
    private boolean pictures;

    CardsCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        if (tree.wrong().isPresent()) {
            err.println(tree.wrong().get());
            return Exit.WRONG_ARGUMENTS;
        }
        CardsOptions options = options();
        if (problems.hasErrors()) {
            problems.sorted().stream().map(Problem::toString).forEach(err::println);
            return Exit.WRONG_ARGUMENTS;
        }
        return new CardsRun(options, out, err).run();
    }

    private CardsOptions options() {
        Optional<Level> only = OptionWord.read("--level", level, Level.words(), Level::of, problems);
        Optional<Level> before = OptionWord.read("--from-level", since, Level.words(), Level::of, problems);
        if (only.isPresent() && before.isPresent() && only.get().compareTo(before.get()) <= 0) {
            problems.add(
                    Place.whole("--from-level " + since),
                    only.get().word() + " has no cards that " + before.get().word() + " had not",
                    "ask for an older level");
        }
        if (!codes.isEmpty() && (topic != null || core || since != null)) {
            problems.add(
                    Place.whole("--cards"),
                    "it names every card that is wanted",
                    "leave --topic, --core and --from-level out");
        }
        return new CardsOptions(
                new CardsOptions.Which(only, codes, Optional.ofNullable(topic), core, before),
                OptionWord.read("--format", format, CardFormat.words(), CardFormat::of, problems),
                new CardMaking(way(), turn()),
                strict ? Overfull.ERROR : Overfull.BESIDE,
                printer.chosen(problems),
                new CardsOptions.Files(
                        paper,
                        spelling.chosen().orElse(Club.Spelling.UK),
                        folder,
                        tree.content(),
                        tree.templates(),
                        Outputs.Pictures.when(pictures),
                        saver.chosen()));
    }

    private Way way() {
        Optional<Way> folded = OptionWord.read(
                "--fold", fold, List.of("sheet", "card"), word -> Optional.ofNullable(FOLDS.get(word)), problems);
        if (sides == null || sides.equalsIgnoreCase(ONE_SIDE)) {
            return folded.orElse(Way.FOLD_SHEET);
        }
        Optional<Way> flipped = OptionWord.read(
                "--sides",
                sides,
                List.of(ONE_SIDE, "long-edge", "short-edge"),
                word -> Optional.ofNullable(SIDES.get(word)),
                problems);
        if (flipped.isPresent() && fold != null) {
            problems.add(
                    Place.whole("--fold " + fold),
                    "cards printed on both sides are not folded",
                    "leave it out, or leave --sides out");
        }
        return flipped.orElse(Way.LONG_EDGE);
    }

    private Turn turn() {
        return OptionWord.read(
                        "--turn", turn, List.of("page", "up"), word -> OptionWord.constant(Turn.class, word), problems)
                .orElse(Turn.PAGE);
    }
}
