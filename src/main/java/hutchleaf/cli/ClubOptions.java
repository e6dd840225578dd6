package hutchleaf.cli;

import hutchleaf.sheet.Paper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The club's folder, and what commands that print for a club have in common. */
final class ClubOptions {
    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..1",
            description = "the club's folder with club.md and members.csv (default: the demo club)")
    private @Nullable Path folder;

    @Option(names = "--out", paramLabel = "DIR", description = "where the PDFs go (default: ${DEFAULT-VALUE})")
    private Path target = Path.of("out");

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: what club.md says)")
    private @Nullable Paper paper;

    @Option(names = "--today", paramLabel = "DATE", description = "the day to print as, for example 2026-06-27")
    private @Nullable LocalDate today;

    @Option(names = "--skip-bad", description = "prints the other members where rows of the roster are wrong")
    private boolean skipBad;

    @Option(names = "--pictures", description = "adds pictures of all pages, to look at before you print")
    private boolean pictures;

    @Mixin
    private final TreeOptions tree = new TreeOptions();

    @Mixin
    private final OneSetting setting = new OneSetting();

    @Mixin
    private final SaverOption saver = new SaverOption();

    ClubRequest request() {
        return new ClubRequest(
                Optional.ofNullable(folder),
                target,
                Optional.ofNullable(paper),
                tree.content(),
                tree.templates(),
                Optional.ofNullable(today),
                setting.chosen(),
                skipBad,
                Outputs.Pictures.when(pictures),
                saver.chosen());
    }

    /** What is wrong with them. */
    Optional<String> wrong() {
        return Stream.of(Optional.ofNullable(folder).flatMap(TreeOptions::missing), tree.wrong(), setting.wrong())
                .flatMap(Optional::stream)
                .findFirst();
    }
}
