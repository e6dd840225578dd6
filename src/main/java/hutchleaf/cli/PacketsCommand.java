package hutchleaf.cli;

import hutchleaf.cli.PacketOptions.Cards;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hutchleaf packets}: what each member of a club needs for one show, and how to print it. */
@Command(
        name = "packets",
        mixinStandardHelpOptions = true,
        description = "Prints a packet for each member of a club, and a plan of what to print.",
        footer = {"", "Example:", "  hutchleaf packets our-club --out print"})
final class PacketsCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Mixin
    private final ClubOptions club = new ClubOptions();

    @Mixin
    private final SpellingOption spelling = new SpellingOption();

    @Option(names = "--only", paramLabel = "NAME", description = "prints this member's packet again and nothing else")
    private @Nullable String only;

    @Option(names = "--whole-deck", description = "puts every card of the level into the packets")
    private boolean wholeDeck;

    @Option(names = "--new-only", description = "leaves out cards that a member's level had last year")
    private boolean newOnly;

    @Option(names = "--with-guide", description = "adds the study guide to each packet")
    private boolean withGuide;

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

    PacketsCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<String> wrong = Stream.of(club.wrong(), weight.wrong(), wrongCards())
                .flatMap(Optional::stream)
                .findFirst();
        if (wrong.isPresent()) {
            err.println(wrong.get());
            return Exit.WRONG_ARGUMENTS;
        }
        return new Packets(
                        new PacketOptions(
                                club.request(),
                                spelling.chosen(),
                                Optional.ofNullable(only),
                                wholeDeck ? Cards.WHOLE_DECK : newOnly ? Cards.NEW_ONLY : Cards.PLAN,
                                withGuide,
                                Optional.ofNullable(booklet)
                                        .map(sides -> new PacketOptions.Folded(sides.binding(), weight.chosen())),
                                Optional.ofNullable(font)),
                        out,
                        err)
                .run();
    }

    private Optional<String> wrongCards() {
        return wholeDeck && newOnly
                ? Optional.of(
                        "--whole-deck and --new-only: one asks for all cards, the other for some; use one of them")
                : Optional.empty();
    }
}
