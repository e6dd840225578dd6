package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hutchleaf publish}: guides, cards and judge's paper for all four divisions. */
@Command(
        name = "publish",
        mixinStandardHelpOptions = true,
        description = "Prints guides, cards and the judge's paper for all four divisions into a folder.",
        footer = {"", "Example:", "  hutchleaf publish --paper a4 --out print"})
final class PublishCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Option(names = "--out", paramLabel = "DIR", description = "where the PDFs go (default: ${DEFAULT-VALUE})")
    private Path folder = Path.of("out");

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: letter)")
    private Paper paper = Paper.LETTER;

    @Mixin
    private final SpellingOption spelling = new SpellingOption();

    @Mixin
    private final SettingOptions settings = new SettingOptions();

    @Option(
            names = "--accommodation",
            description = "adds a talk-through sheet for a member who directs a helper, and a cue card")
    private boolean accommodation;

    @Mixin
    private final SaverOption saver = new SaverOption();

    @Mixin
    private final TreeOptions tree = new TreeOptions();

    @Option(
            names = "--leave-out",
            paramLabel = "FIGURE",
            description = "a figure that is not to be printed, for example figures/sex-guide.svg; may be given again")
    private List<String> leaveOut = List.of();

    @Option(names = "--pictures", description = "adds pictures of all pages, to look at before you print")
    private boolean pictures;

    PublishCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        if (tree.wrong().isPresent()) {
            err.println(tree.wrong().get());
            return Exit.WRONG_ARGUMENTS;
        }
        return new Publish(
                        new Publish.Request(
                                folder,
                                paper,
                                spelling.chosen().orElse(Club.Spelling.UK),
                                settings.chosen(),
                                accommodation,
                                tree.content(),
                                tree.templates(),
                                Set.copyOf(leaveOut),
                                Outputs.Pictures.when(pictures),
                                saver.chosen()),
                        out,
                        err)
                .run();
    }
}
