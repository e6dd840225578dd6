package hutchleaf.cli;

import hutchleaf.model.Setting;
import java.util.EnumSet;
import java.util.Set;
import picocli.CommandLine.Option;

/** {@code --large-print} and {@code --easy-read}: settings that are printed beside the ordinary one. */
final class SettingOptions {
    @Option(
            names = "--large-print",
            description =
                    "adds guides, sheets and judge's paper in large print, 18 pt or more, in files that end in -large")
    private boolean large;

    @Option(
            names = "--easy-read",
            description =
                    "adds guides, sheets and judge's paper with wider lines, words and letters, in files that end in -easy")
    private boolean easy;

    Set<Setting> chosen() {
        Set<Setting> settings = EnumSet.noneOf(Setting.class);
        if (large) {
            settings.add(Setting.LARGE);
        }
        if (easy) {
            settings.add(Setting.EASY);
        }
        return settings;
    }
}
