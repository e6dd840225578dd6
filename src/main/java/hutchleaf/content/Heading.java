package hutchleaf.content;

import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A heading taken apart: {@code Name two causes. (from junior, any 2) {11.9 core}}.
 *
 * <p>Brackets at the end are read as levels and options only when they hold such words; other brackets are text.
 *
 * @param text what is left when levels, options and braces are taken off
 * @param options {@code own rabbit}, {@code any 2}
 * @param braces what stands between the braces
 */
record Heading(String text, Optional<Levels> levels, List<String> options, Optional<String> braces) {
    private static final Pattern BRACES = Pattern.compile("(.*?)\\s*\\{([^{}]*)\\}");
    private static final Pattern BRACKETS = Pattern.compile("(.*?)\\s*\\(([^()]*)\\)");
    private static final Pattern OPTION = Pattern.compile("own rabbit|any \\d+");
    private static final Pattern BLANK = Pattern.compile("(fact|rabbit|member|club)\\..*");

    Heading {
        options = List.copyOf(options);
    }

    static Heading parse(String raw, Place at, Problems problems) {
        String rest = raw.strip();
        Optional<String> braces = Optional.empty();
        Optional<Levels> levels = Optional.empty();
        List<String> options = new ArrayList<>();
        while (true) {
            Matcher brace = BRACES.matcher(rest);
            if (braces.isEmpty()
                    && brace.matches()
                    && !BLANK.matcher(brace.group(2)).matches()) {
                braces = Optional.of(brace.group(2).strip());
                rest = brace.group(1);
                continue;
            }
            Matcher bracket = BRACKETS.matcher(rest);
            if (!bracket.matches() || !holdsOptions(bracket.group(2))) {
                return new Heading(rest, levels, options, braces);
            }
            for (String item : split(bracket.group(2))) {
                Optional<Levels> read = Levels.parse(item);
                if (read.isPresent()) {
                    levels = read;
                } else if (OPTION.matcher(item).matches()) {
                    options.add(item);
                } else {
                    problems.add(at, "cannot read '(" + item + ")' in the heading", mend(item));
                }
            }
            rest = bracket.group(1);
        }
    }

    private static boolean holdsOptions(String inside) {
        return split(inside).stream()
                .anyMatch(item ->
                        Levels.parse(item).isPresent() || OPTION.matcher(item).matches() || meantAsLevel(item));
    }

    /** A word close to a level's name, or a level's name in other company, is a slip and no part of the text. */
    private static boolean meantAsLevel(String item) {
        List<String> words = Arrays.asList(item.split("\\s+"));
        return words.size() <= 3
                && words.stream()
                        .anyMatch(word -> word.length() > 4
                                && NearMiss.of(word, Level.words()).isPresent());
    }

    private static String mend(String item) {
        return Arrays.stream(item.split("\\s+"))
                .map(word -> NearMiss.of(word, Level.words()).filter(near -> !near.equals(word)))
                .flatMap(Optional::stream)
                .findFirst()
                .map(near -> "did you mean '" + near + "'?")
                .orElse("write (from junior), (primary only), (junior to intermediate) or (to junior)");
    }

    private static List<String> split(String inside) {
        return Arrays.stream(inside.split(",")).map(String::strip).toList();
    }
}
