package hutchleaf.cli;

import hutchleaf.proof.Spelling;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hutchleaf proof}: reads the tree and every edition of it, and says what to mend. */
@Command(
        name = "proof",
        mixinStandardHelpOptions = true,
        description =
                "Reads the content and every edition made of it, and says what is wrong, where, and how to mend it.",
        footer = {"", "Example:", "  hutchleaf proof --content content --json"})
final class ProofCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Mixin
    private final TreeOptions tree = new TreeOptions();

    @Option(names = "--spelling", paramLabel = "SPELLING", description = "uk or us (default: uk)")
    private Spelling spelling = Spelling.UK;

    @Option(
            names = "--word-list",
            paramLabel = "FILE",
            description = "familiar words, one a line: gives the primary edition its Spache grade")
    private @Nullable Path wordList;

    @Option(
            names = "--dale-chall-list",
            paramLabel = "FILE",
            description = "familiar words, one a line: gives the other editions their Dale-Chall score")
    private @Nullable Path daleChallList;

    @Option(names = "--ink", description = "measures the lines of every figure too, which takes a few seconds more")
    private boolean ink;

    @Option(names = "--json", description = "findings, coverage and reading levels for machines")
    private boolean json;

    ProofCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<String> wrong = Stream.of(tree.wrong(), file(wordList), file(daleChallList))
                .flatMap(Optional::stream)
                .findFirst();
        if (wrong.isPresent()) {
            err.println(wrong.get());
            return Exit.WRONG_ARGUMENTS;
        }
        return new ProofRun(
                        new ProofRun.Request(
                                tree.content(),
                                tree.templates(),
                                new ProofRun.Lists(Optional.ofNullable(wordList), Optional.ofNullable(daleChallList)),
                                spelling,
                                ink ? PageChecks.InkMeasured.YES : PageChecks.InkMeasured.NO),
                        json ? ReportJson::print : ReportText::print)
                .run(out);
    }

    private static Optional<String> file(@Nullable Path path) {
        return Optional.ofNullable(path)
                .filter(named -> !Files.isRegularFile(named))
                .map(named -> named + ": there is no such file; name one that is there");
    }
}
