package hutchleaf.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** The program itself: without a command it publishes everything embedded. */
@Command(
        name = "hutchleaf",
        mixinStandardHelpOptions = true,
        version = "hutchleaf 0.1.0",
        description = "Prints study guides, fold-over flashcards and score sheets for young rabbit exhibitors.",
        footer = {"", "Example:", "  hutchleaf publish --paper a4 --out print"})
final class Hutchleaf implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    Hutchleaf(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        return new PublishCommand(out, err).call();
    }
}
