package hutchleaf.club;

import hutchleaf.model.Needs;
import hutchleaf.model.Setting;
import hutchleaf.problem.NearMiss;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The cells on how a member's paper is printed and what helps at the table. An empty cell may be told by another row of
 * the same member.
 */
record NeedsCells(Optional<Setting> setting, Optional<Set<Help>> help) {
    /** What helps at the table. */
    enum Help {
        TALK_THROUGH,
        CUE_CARD
    }

    private static final Map<String, Setting> SETTINGS = Map.ofEntries(
            Map.entry("large print", Setting.LARGE),
            Map.entry("large", Setting.LARGE),
            Map.entry("largeprint", Setting.LARGE),
            Map.entry("large type", Setting.LARGE),
            Map.entry("big print", Setting.LARGE),
            Map.entry("18 pt", Setting.LARGE),
            Map.entry("18pt", Setting.LARGE),
            Map.entry("easy read", Setting.EASY),
            Map.entry("easy", Setting.EASY),
            Map.entry("easyread", Setting.EASY),
            Map.entry("easy reading", Setting.EASY),
            Map.entry("easy to read", Setting.EASY),
            Map.entry("ordinary", Setting.ORDINARY),
            Map.entry("standard", Setting.ORDINARY),
            Map.entry("none", Setting.ORDINARY),
            Map.entry("no", Setting.ORDINARY));

    private static final Map<String, Set<Help>> HELPS = Map.ofEntries(
            Map.entry("talk through", Set.of(Help.TALK_THROUGH)),
            Map.entry("talkthrough", Set.of(Help.TALK_THROUGH)),
            Map.entry("talk through sheet", Set.of(Help.TALK_THROUGH)),
            Map.entry("cue card", Set.of(Help.CUE_CARD)),
            Map.entry("cuecard", Set.of(Help.CUE_CARD)),
            Map.entry("cue cards", Set.of(Help.CUE_CARD)),
            Map.entry("both", Set.of(Help.TALK_THROUGH, Help.CUE_CARD)),
            Map.entry("none", Set.of()),
            Map.entry("no", Set.of()));

    private static final List<String> SETTING_WORDS = List.of("large print", "easy read");
    private static final List<String> HELP_WORDS = List.of("talk through", "cue card");

    static NeedsCells read(Cells cells) {
        return new NeedsCells(setting(cells), help(cells));
    }

    /** What the rows of one member say together. */
    static Needs of(List<NeedsCells> rows) {
        Set<Help> help =
                rows.stream().flatMap(row -> row.help().stream()).findFirst().orElse(Set.of());
        return new Needs(
                rows.stream().flatMap(row -> row.setting().stream()).findFirst().orElse(Setting.ORDINARY),
                help.contains(Help.TALK_THROUGH),
                help.contains(Help.CUE_CARD));
    }

    private static Optional<Setting> setting(Cells cells) {
        String text = plain(cells.text(Column.SETTING));
        Optional<Setting> found = Optional.ofNullable(SETTINGS.get(text));
        if (found.isEmpty() && !text.isEmpty()) {
            cells.unreadable(Column.SETTING, mend(text, SETTING_WORDS, "write large print or easy read, or nothing"));
        }
        return found;
    }

    /** One word or several, parted by commas, {@code and}, a plus or a slash. */
    private static Optional<Set<Help>> help(Cells cells) {
        List<String> parts = Stream.of(cells.text(Column.ACCOMMODATION).split("[,;+/&]|\\band\\b"))
                .map(NeedsCells::plain)
                .filter(part -> !part.isEmpty())
                .toList();
        Set<Help> helps = EnumSet.noneOf(Help.class);
        List<String> unknown = new ArrayList<>();
        for (String part : parts) {
            Optional.ofNullable(HELPS.get(part)).ifPresentOrElse(helps::addAll, () -> unknown.add(part));
        }
        if (!unknown.isEmpty()) {
            cells.unreadable(
                    Column.ACCOMMODATION,
                    mend(unknown.get(0), HELP_WORDS, "write talk through, cue card, both of them, or nothing"));
        }
        return parts.isEmpty() || !unknown.isEmpty() ? Optional.empty() : Optional.of(helps);
    }

    private static String mend(String text, List<String> words, String otherwise) {
        return NearMiss.of(text, words)
                .map(near -> "did you mean '" + near + "'?")
                .orElse(otherwise);
    }

    /** Small letters; a hyphen or an underscore is a space. */
    private static String plain(String text) {
        return String.join(
                        " ",
                        Arrays.asList(text.toLowerCase(Locale.ROOT)
                                .replaceAll("[-_\u2010-\u2013]", " ")
                                .strip()
                                .split("\\s+")))
                .strip();
    }
}
