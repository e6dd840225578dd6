package hutchleaf.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/**
 * The program itself. Without a command it prints the packets of the club whose files lie beside the jar; where there are
 * none it publishes everything embedded, and the demo club's packets.
 */
@Command(
        name = "hutchleaf",
        mixinStandardHelpOptions = true,
        version = "hutchleaf 0.1.0",
        description =
                "Prints study guides, fold-over flashcards, score sheets and members' packets for rabbit showmanship.",
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
        Optional<BesideTheJar> club = BesideTheJar.found();
        if (club.isPresent()) {
            return club.get().run(out, err);
        }
        int exit = new PublishCommand(out, err).call();
        return exit == Exit.DONE ? new PacketsCommand(out, err).call() : exit;
    }
}
