package hutchleaf.cli;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Where the program starts. It only exits; the work is in {@link #run}. */
public final class Main {
    private Main() {}

    public static void main(String... args) {
        System.setProperty("java.awt.headless", "true");
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int exit = run(out, err, args);
        if (exit != Exit.DONE) {
            System.exit(exit);
        }
    }

    /** Runs a command and gives its exit code. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Hutchleaf(out, err))
                .addSubcommand(new PublishCommand(out, err))
                .addSubcommand(new PacketsCommand(out, err))
                .addSubcommand(new ScoreSheetsCommand(out, err))
                .addSubcommand(new CardsCommand(out, err))
                .addSubcommand(new BookletCommand(out, err))
                .addSubcommand(new RulerCommand(out, err))
                .addSubcommand(new ProofCommand(out, err))
                .addSubcommand(new NewClubCommand(out, err))
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((failure, command, parsed) -> explain(failure, err));
        return line.execute(args);
    }

    private static int explain(Exception failure, PrintWriter err) {
        if (failure instanceof UncheckedIOException broken) {
            Throwable cause = broken.getCause();
            err.println(broken.getMessage() + (cause == null ? "" : ": " + cause.getMessage()));
            return Exit.COULD_NOT_READ_OR_WRITE;
        }
        err.println("This is a bug of Hutchleaf, not of your files. Please report it with these lines:");
        failure.printStackTrace(err);
        return Exit.OUR_BUG;
    }
}
