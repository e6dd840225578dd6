package hutchleaf.cli;

import hutchleaf.model.Club;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** {@code --spelling}, for commands that print. */
final class SpellingOption {
    @Option(
            names = "--spelling",
            paramLabel = "SPELLING",
            description =
                    "uk or us: how everything printed is spelled, names excepted (default: what club.md says, or uk)")
    private Club.@Nullable Spelling spelling;

    Optional<Club.Spelling> chosen() {
        return Optional.ofNullable(spelling);
    }
}
