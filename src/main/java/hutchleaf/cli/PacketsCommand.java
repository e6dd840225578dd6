package hutchleaf.cli;

import hutchleaf.cli.PacketOptions.Cards;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hutchleaf packets}: what each member of a club needs for one show, and how to print it. */
@Command(
        name = "packets",
        mixinStandardHelpOptions = true,
        description = "Prints a packet for each member of a club, and a plan of what to print.",
        footer = {"", "Example:", "  hutchleaf packets our-club --out print"})
final class PacketsCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..1",
            description = "the club's folder with club.md and members.csv (default: the demo club)")
    private @Nullable Path folder;

    @Option(names = "--out", paramLabel = "DIR", description = "where the PDFs go (default: ${DEFAULT-VALUE})")
    private Path target = Path.of("out");

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: what club.md says)")
    private @Nullable Paper paper;

    @Mixin
    private final SpellingOption spelling = new SpellingOption();

    @Mixin
    private final SaverOption saver = new SaverOption();

    @Option(names = "--content", paramLabel = "DIR", description = "a content tree of your own")
    private @Nullable Path content;

    @Option(names = "--templates", paramLabel = "DIR", description = "templates of your own")
    private @Nullable Path templates;

    @Option(names = "--today", paramLabel = "DATE", description = "the day to print as, for example 2026-06-27")
    private @Nullable LocalDate today;

    @Option(names = "--only", paramLabel = "NAME", description = "prints this member's packet again and nothing else")
    private @Nullable String only;

    @Option(names = "--skip-bad", description = "prints the other members where rows of the roster are wrong")
    private boolean skipBad;

    @Option(names = "--whole-deck", description = "puts every card of the level into the packets")
    private boolean wholeDeck;

    @Option(names = "--new-only", description = "leaves out cards that a member's level had last year")
    private boolean newOnly;

    @Option(names = "--with-guide", description = "adds the study guide to each packet")
    private boolean withGuide;

    @Mixin
    private final OneSetting setting = new OneSetting();

    @Option(
            names = "--booklet",
            paramLabel = "SIDES",
            arity = "0..1",
            fallbackValue = "short-edge",
            description = "the reading pages as a booklet to fold; for printers that turn over the short-edge, or print"
                    + " one side (default: short-edge)")
    private @Nullable BookletSides booklet;

    @Mixin
    private final WeightOption weight = new WeightOption();

    @Option(
            names = "--font",
            paramLabel = "FILE",
            description = "a TrueType font for names in letters that the fonts of the program lack")
    private @Nullable Path font;

    @Option(names = "--pictures", description = "adds pictures of all pages, to look at before you print")
    private boolean pictures;

    PacketsCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<Path> missing = Stream.of(
                        Optional.ofNullable(folder), Optional.ofNullable(content), Optional.ofNullable(templates))
                .flatMap(Optional::stream)
                .filter(path -> !Files.isDirectory(path))
                .findFirst();
        if (missing.isPresent()) {
            err.println(missing.get() + ": there is no such folder; name one that is there");
            return Exit.WRONG_ARGUMENTS;
        }
        if (weight.wrong().isPresent()) {
            err.println(weight.wrong().get());
            return Exit.WRONG_ARGUMENTS;
        }
        if (wholeDeck && newOnly) {
            err.println("--whole-deck and --new-only: one asks for all cards, the other for some; use one of them");
            return Exit.WRONG_ARGUMENTS;
        }
        if (setting.wrong().isPresent()) {
            err.println(setting.wrong().get());
            return Exit.WRONG_ARGUMENTS;
        }
        return new Packets(
                        new PacketOptions(
                                Optional.ofNullable(folder),
                                target,
                                Optional.ofNullable(paper),
                                spelling.chosen(),
                                Optional.ofNullable(content),
                                Optional.ofNullable(templates),
                                Optional.ofNullable(today),
                                Optional.ofNullable(only),
                                skipBad,
                                wholeDeck ? Cards.WHOLE_DECK : newOnly ? Cards.NEW_ONLY : Cards.PLAN,
                                withGuide,
                                setting.chosen(),
                                Optional.ofNullable(booklet)
                                        .map(sides -> new PacketOptions.Folded(sides.binding(), weight.chosen())),
                                Outputs.Pictures.when(pictures),
                                Optional.ofNullable(font),
                                saver.chosen()),
                        out,
                        err)
                .run();
    }
}
