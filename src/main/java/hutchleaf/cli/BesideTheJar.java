package hutchleaf.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;

/**
 * A double click on the jar, with a club's files beside it. Nobody sees a terminal then: what is wrong goes into a text
 * file beside them.
 */
final class BesideTheJar {
    static final String CLUB = "club.md";
    static final String PROBLEMS = "what-to-mend.txt";
    static final String PRINT = "print";

    private final Path folder;

    private BesideTheJar(Path folder) {
        this.folder = folder;
    }

    /** The club's folder; empty when the program is no jar, or no {@code club.md} lies beside it. */
    static Optional<BesideTheJar> found() {
        CodeSource source = BesideTheJar.class.getProtectionDomain().getCodeSource();
        if (source == null) {
            return Optional.empty();
        }
        try {
            return beside(Path.of(source.getLocation().toURI()));
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }

    /** The same for a program at a place. */
    static Optional<BesideTheJar> beside(Path program) {
        Path folder = program.toAbsolutePath().getParent();
        return folder != null && Files.isRegularFile(program) && Files.isRegularFile(folder.resolve(CLUB))
                ? Optional.of(new BesideTheJar(folder))
                : Optional.empty();
    }

    /** Prints the club's packets into a folder beside the jar. */
    int run(PrintWriter out, PrintWriter err) {
        StringWriter told = new StringWriter();
        PrintWriter problems = new PrintWriter(told, true);
        int exit = new Packets(PacketOptions.of(folder, folder.resolve(PRINT)), out, problems).run();
        problems.flush();
        err.print(told);
        err.flush();
        leave(told.toString());
        return exit;
    }

    private void leave(String told) {
        Path file = folder.resolve(PROBLEMS);
        try {
            if (told.isBlank()) {
                Files.deleteIfExists(file);
            } else {
                Files.writeString(
                        file,
                        "Please look at these lines. Each names the file, the line and what to write instead."
                                + System.lineSeparator() + System.lineSeparator()
                                + told);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not write " + file, e);
        }
    }
}
