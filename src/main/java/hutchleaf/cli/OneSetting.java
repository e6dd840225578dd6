package hutchleaf.cli;

import hutchleaf.model.Setting;
import java.util.Optional;
import picocli.CommandLine.Option;

/** {@code --large-print} or {@code --easy-read} in place of the ordinary setting. */
final class OneSetting {
    @Option(names = "--large-print", description = "prints in 18 pt or more; what a member's row names comes first")
    private boolean large;

    @Option(
            names = "--easy-read",
            description = "prints with wider lines, words and letters; what a member's row names comes first")
    private boolean easy;

    Setting chosen() {
        return large ? Setting.LARGE : easy ? Setting.EASY : Setting.ORDINARY;
    }

    /** What is wrong where both were asked for. */
    Optional<String> wrong() {
        return large && easy
                ? Optional.of("--large-print and --easy-read: a page is set in one of them; use one")
                : Optional.empty();
    }
}
