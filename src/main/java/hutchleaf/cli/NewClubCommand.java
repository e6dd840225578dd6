package hutchleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hutchleaf new-club}: a folder to start a club from, with notes on every key and column. */
@Command(
        name = "new-club",
        mixinStandardHelpOptions = true,
        description = "Writes a folder for a club, with notes that tell what to fill in. Nothing is overwritten.",
        footer = {"", "Example:", "  hutchleaf new-club our-club"})
final class NewClubCommand implements Callable<Integer> {
    private static final String STARTER = "/new-club/";
    private static final List<String> FILES = List.of("club.md", "members.csv");

    /** Own rule: time enough to study, and for the sample rabbits to be grown. */
    private static final int WEEKS_TO_THE_SHOW = 8;

    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(paramLabel = "FOLDER", description = "where the club's files go")
    private Path folder = Path.of("");

    @Option(names = "--today", paramLabel = "DATE", description = "the day to count from, for example 2026-06-27")
    private @Nullable LocalDate today;

    NewClubCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<Path> taken = Files.exists(folder) && !Files.isDirectory(folder)
                ? Optional.of(folder)
                : FILES.stream().map(folder::resolve).filter(Files::exists).findFirst();
        if (taken.isPresent()) {
            err.println(taken.get() + ": it is there already, and nothing was written; name another folder");
            return Exit.WRONG_ARGUMENTS;
        }
        Map<String, String> dates = dates(today == null ? LocalDate.now(ZoneId.systemDefault()) : today);
        try {
            Files.createDirectories(folder);
            for (String file : FILES) {
                Files.writeString(folder.resolve(file), filled(file, dates), StandardOpenOption.CREATE_NEW);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not write into " + folder, e);
        }
        out.println("Wrote " + folder.resolve(FILES.get(0)) + " and " + folder.resolve(FILES.get(1))
                + ". Open both and write your own club in.");
        return Exit.DONE;
    }

    /** Dates that suit any day the folder is made on: members of 9 or 10 and of 15 or 16 years, grown rabbits. */
    private static Map<String, String> dates(LocalDate today) {
        LocalDate show = today.plusWeeks(WEEKS_TO_THE_SHOW);
        return Map.of(
                "{show-date}", show.toString(),
                "{junior-born}", LocalDate.of(show.getYear() - 10, 3, 14).toString(),
                "{senior-born}", LocalDate.of(show.getYear() - 16, 5, 20).toString(),
                "{buck-born}", today.minusMonths(7).toString(),
                "{doe-born}", today.minusMonths(10).toString());
    }

    private static String filled(String file, Map<String, String> dates) throws IOException {
        try (InputStream starter = Objects.requireNonNull(
                NewClubCommand.class.getResourceAsStream(STARTER + file), "no starter is packed: " + file)) {
            String text = new String(starter.readAllBytes(), StandardCharsets.UTF_8);
            for (Map.Entry<String, String> date : dates.entrySet()) {
                text = text.replace(date.getKey(), date.getValue());
            }
            return text;
        }
    }
}
