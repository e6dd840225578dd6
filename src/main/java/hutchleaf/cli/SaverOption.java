package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.page.Templates;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** {@code --saver}, for commands that print. */
final class SaverOption {
    @Option(
            names = "--saver",
            description =
                    "prints with less ink or toner: light letters, outlines for black grounds; nothing is left out")
    private boolean asked;

    Club.Saver chosen() {
        return asked ? Club.Saver.YES : Club.Saver.NO;
    }

    /**
     * The templates in a folder, or the embedded ones, as they are to be printed.
     *
     * @param saver what was asked of the command; club: what its file says
     */
    static Templates templates(Optional<Path> folder, Club.Saver saver, Club.Saver club) {
        boolean either = saver == Club.Saver.YES || club == Club.Saver.YES;
        return folder.map(Templates::folder)
                .orElseGet(Templates::embedded)
                .saving(either ? Club.Saver.YES : Club.Saver.NO);
    }
}
