package hutchleaf.cli;

import hutchleaf.page.JudgedClass.Beside;
import hutchleaf.sheet.Spare;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hutchleaf scoresheets}: what lies on a judge's clipboard, a file for each judge and division. */
@Command(
        name = "scoresheets",
        mixinStandardHelpOptions = true,
        description = "Prints the judge's paper for a club's show: lists, numbered score sheets, grids, questions.",
        footer = {"", "Example:", "  hutchleaf scoresheets our-club --judges 2 --out print"})
final class ScoreSheetsCommand implements Callable<Integer> {
    private static final int MOST_COPIES = 100;
    private static final int MOST_JUDGES = 2;

    private final PrintWriter out;
    private final PrintWriter err;

    @Mixin
    private final ClubOptions club = new ClubOptions();

    @Option(names = "--division", paramLabel = "DIVISION", description = "one division only: its name or its level")
    private @Nullable String division;

    @Option(
            names = "--copies",
            paramLabel = "N",
            description = "sheets for each contestant (default: 1); with --blank, sheets in all")
    private @Nullable Integer copies;

    @Option(
            names = "--spare",
            paramLabel = "SPARE",
            description = "sheets for late entries and misprints, a share or a number (default: ${DEFAULT-VALUE})")
    private String spare = "10%";

    @Option(names = "--blank", description = "no names and no numbers: they are written by hand")
    private boolean blank;

    @Option(names = "--judges", paramLabel = "N", description = "1 or 2 (default: ${DEFAULT-VALUE})")
    private int judges = 1;

    @Option(
            names = "--names",
            paramLabel = "WHICH",
            description =
                    "beside the number: initial (Juniper H., rabbit and breed), whole (the whole name), rabbit (no"
                            + " name) or number (nothing) (default: initial)")
    private Beside beside = Beside.INITIAL;

    @Option(names = "--title", paramLabel = "NAME", description = "the show's name (default: what club.md says)")
    private @Nullable String title;

    ScoreSheetsCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<Spare> laidAside = Spare.read(spare);
        Optional<String> wrong = Stream.of(
                        club.wrong(),
                        wrongNumber(),
                        laidAside.isPresent()
                                ? Optional.<String>empty()
                                : Optional.of("--spare " + spare + ": this is no share and no number; write 10% or 2"))
                .flatMap(Optional::stream)
                .findFirst();
        if (wrong.isPresent() || laidAside.isEmpty()) {
            wrong.ifPresent(err::println);
            return Exit.WRONG_ARGUMENTS;
        }
        return new ScoreSheets(
                        new ScoreSheetsOptions(
                                club.request(),
                                new ScoreSheetsOptions.Wanted(
                                        Optional.ofNullable(division),
                                        Optional.ofNullable(copies),
                                        laidAside.get(),
                                        blank,
                                        judges,
                                        beside,
                                        Optional.ofNullable(title))),
                        out,
                        err)
                .run();
    }

    private Optional<String> wrongNumber() {
        if (judges < 1 || judges > MOST_JUDGES) {
            return Optional.of("--judges " + judges + ": a class has one judge or two; write 1 or 2");
        }
        return Optional.ofNullable(copies)
                .filter(number -> number < 1 || number > MOST_COPIES)
                .map(number -> "--copies " + number + ": this cannot be printed; write 1 to " + MOST_COPIES);
    }
}
