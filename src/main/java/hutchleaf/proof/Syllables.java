package hutchleaf.proof;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Counts the syllables of English words by {@link SyllableRules}. As Flesch's step list has it (A New Readability
 * Yardstick, Journal of Applied Psychology 32, 1948): a hyphenated word or a contraction is one word, whose syllables
 * are those of its parts; figures, symbols and abbreviations are one syllable each.
 */
final class Syllables {
    /** Words of the trade that the rules miss, in the shorter of two ways to say them. Our own counts. */
    private static final Map<String, Integer> TRADE = Map.ofEntries(
            Map.entry("ammonia", 3),
            Map.entry("argente", 2),
            Map.entry("bluish", 2),
            Map.entry("chocolate", 2),
            Map.entry("diarrhoea", 4),
            Map.entry("rhinelander", 3),
            Map.entry("tortoiseshell", 3),
            Map.entry("veterinarian", 5),
            Map.entry("veterinary", 4));

    /** Capitals only, with or without a small plural s: letters that are read one by one, ARBA or DVDs. */
    private static final Pattern ABBREVIATION = Pattern.compile("\\p{Lu}{2,5}s?|\\p{L}(?:\\.\\p{L})+\\.?");

    private static final Pattern LETTERS = Pattern.compile("\\p{L}");

    private static final Pattern JOINT = Pattern.compile("[^\\p{L}\\p{M}\\p{N}'\u2019.]+");

    /** The part of a contraction that is said on its own: isn't, needn't, it'll, could've, it'd, fox's. */
    private static final Pattern SAID_ALONE =
            Pattern.compile("(?:[^aeiour]|[^r]e)n't|[^aeiouyw](?:'ll|'ve)|[dt]'d|(?:[sxz]|[cs]h|[cgsz]e)'s");

    private static final Pattern ENDING = Pattern.compile("(?:n't|'(?:d|ll|m|re|s|ve)?)$");

    private Syllables() {}

    /** The syllables of a word in any case, without the marks around it; 1 for what has no letters. */
    static int in(String word) {
        if (!LETTERS.matcher(word).find() || ABBREVIATION.matcher(word).matches()) {
            return 1;
        }
        int sum = 0;
        for (String part : JOINT.split(word)) {
            if (!part.isEmpty()) {
                sum += inPart(plain(part));
            }
        }
        return Math.max(1, sum);
    }

    /** Small letters without accents, the curly apostrophe made straight. */
    private static String plain(String part) {
        return Normalizer.normalize(part, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replace('\u2019', '\'')
                .toLowerCase(Locale.ROOT);
    }

    private static int inPart(String part) {
        int more = SAID_ALONE.matcher(part).results().anyMatch(said -> said.end() == part.length()) ? 1 : 0;
        String stem = ENDING.matcher(part).replaceFirst("").replaceAll("[^a-z0-9]", "");
        return stem.isEmpty() ? more : more + inStem(stem);
    }

    private static int inStem(String stem) {
        if (stem.chars().anyMatch(Character::isDigit)) {
            return 1;
        }
        String one = stem.endsWith("s") ? stem.substring(0, stem.length() - 1) : stem;
        return TRADE.getOrDefault(one, SyllableRules.syllables(stem));
    }
}
