package hutchleaf.club;

import hutchleaf.content.FrontMatter.Field;
import hutchleaf.problem.Problems;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Checks the leader's line on how the head is held. Nothing that hurts may be what is held: not the ears, not the neck, not
 * its skin. Ears may tell a place ({@code behind the ears}), and a warning may name what is never held.
 *
 * <p>Source: that a rabbit is never lifted or restrained by its ears or scruff is what the handling topics of the content
 * tree say, with their sources.
 */
final class Grip {
    private static final int LONGEST = 160;

    /** A clause ends where another begins; a list of nouns goes on with the clause before it. */
    private static final Pattern CLAUSES = Pattern.compile("[,.;:!?()]+|\\b(?:and|but|then|while)\\b|\\s[-–—]\\s");

    private static final Pattern HURTS =
            find("\\b(?:scruff\\w*|nape|(?:neck|loose) ?(?:skin|fur)|(?:skin|fur)\\b(?: \\w+){0,3}"
                    + " neck|skin|ears?|necks?)\\b");

    /** The same words where they only tell a place. */
    private static final Pattern PLACE =
            find("\\b(?:behind|between|beside|below|beneath|in front of|clear of|away from|free of)"
                    + " (?:(?:the|its|both|each|rabbit's|back of|base of|root of) )*(?:neck|ears?)\\b");

    private static final Pattern WARNING =
            find("\\b(?:never|not|no|don['’]t|nobody|without|nor|neither|instead of)\\b");

    /** A warning against these is none: "do not let go of the ears". */
    private static final Pattern LETTING_GO = find("\\b(?:let go|release|loosen|slip)\\w*\\b");

    private static final Pattern LIST_ONLY =
            find("\\s*(?:(?:or|nor|by|at|with|of|the|its|any|loose|neck|skin|fur|ears?|scruff|nape)\\b\\s*)+");

    private Grip() {}

    /** The line as it stands, or an error and nothing. */
    static Optional<String> read(Field field, Problems problems) {
        String line = field.value();
        Optional<String> held = held(line);
        if (held.isPresent()) {
            problems.add(
                    field.at(),
                    "'grip' names '" + held.get() + "' as what is held",
                    "that hurts: say where an open hand lies, for example over the shoulders, behind the ears");
            return Optional.empty();
        }
        if (line.length() > LONGEST) {
            problems.add(field.at(), "'grip' has " + line.length() + " letters", "keep it to one line of " + LONGEST);
            return Optional.empty();
        }
        return Optional.of(line);
    }

    private static Optional<String> held(String line) {
        boolean warned = false;
        for (String clause : CLAUSES.split(line)) {
            boolean goesOn = warned && LIST_ONLY.matcher(clause).matches();
            warned = goesOn
                    || (WARNING.matcher(clause).find()
                            && !LETTING_GO.matcher(clause).find());
            Matcher hurts = HURTS.matcher(PLACE.matcher(clause).replaceAll("there"));
            if (!warned && hurts.find()) {
                return Optional.of(hurts.group());
            }
        }
        return Optional.empty();
    }

    private static Pattern find(String pattern) {
        return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
