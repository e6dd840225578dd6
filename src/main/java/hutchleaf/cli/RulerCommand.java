package hutchleaf.cli;

import hutchleaf.page.RulerPages;
import hutchleaf.page.Templates;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code hutchleaf ruler}: a sheet on which a leader measures what a printer does to a page. */
@Command(
        name = "ruler",
        mixinStandardHelpOptions = true,
        description = "Prints a sheet to measure your printer with: its blank edges, its true size, front to back.",
        footer = {"", "Example:", "  hutchleaf ruler --paper a4 --out print"})
final class RulerCommand implements Callable<Integer> {
    private static final String FILE = "ruler.pdf";

    private final PrintWriter out;
    private final PrintWriter err;

    @Option(names = "--out", paramLabel = "DIR", description = "where the PDF goes (default: ${DEFAULT-VALUE})")
    private Path folder = Path.of("out");

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: letter)")
    private Paper paper = Paper.LETTER;

    @Option(names = "--templates", paramLabel = "DIR", description = "templates of your own")
    private @Nullable Path templates;

    RulerCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<String> missing = Optional.ofNullable(templates).flatMap(TreeOptions::missing);
        if (missing.isPresent()) {
            err.println(missing.get());
            return Exit.WRONG_ARGUMENTS;
        }
        Problems problems = new Problems();
        Templates from = templates == null ? Templates.embedded() : Templates.folder(templates);
        Optional<Printed> printed = RulerPages.of(from, paper, problems)
                .flatMap(pages -> new Press(path -> Optional.empty()).print(pages, problems));
        problems.sorted().forEach(err::println);
        if (printed.isEmpty() || problems.hasErrors()) {
            err.println("Nothing was written.");
            return Exit.CONTENT_TO_MEND;
        }
        try (Outputs outputs = new Outputs(folder, "ruler", Outputs.Pictures.NONE)) {
            outputs.add(FILE, printed.get());
            outputs.commit();
        }
        Table table = new Table();
        table.add(FILE, printed.get().pages(), 1, "the leader, to measure the printer");
        table.print(out);
        out.println();
        out.println("Print " + FILE + " on both sides at its true size (100 %). The sheet tells the rest.");
        return Exit.DONE;
    }
}
