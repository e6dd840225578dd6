package hutchleaf.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One word of running text. As Flesch's step list has it, whatever stands between two spaces is one word: a contraction,
 * a hyphenated word, a figure, a symbol, an abbreviation. A dash parts two words and is none itself.
 *
 * @param word the word as written, without the marks around it
 * @param endsSentence whether the sentence is over after it
 */
record Token(String word, boolean endsSentence) {
    /** A dash between figures, 6–8, joins them; any other parts two words. */
    private static final Pattern GAP =
            Pattern.compile("[\\s\u00a0\u202f]+|\u2014|--+|(?<!\\p{N})\u2013|\u2013(?!\\p{N})");

    private static final String OUTSIDE = "[^\\p{L}\\p{M}\\p{N}\\p{S}%&@]+";
    private static final Pattern BEFORE = Pattern.compile("^" + OUTSIDE);
    private static final Pattern AFTER = Pattern.compile(OUTSIDE + "$");
    private static final Pattern END = Pattern.compile("[.!?\u2026]");

    /** Always followed by what they shorten or point to. */
    private static final Set<String> LEADING =
            Set.of("approx", "ca", "cf", "dr", "e.g", "i.e", "mr", "mrs", "ms", "prof", "st", "viz", "vs");

    /** Only before a figure; elsewhere they may be words. */
    private static final Set<String> BEFORE_FIGURE = Set.of("fig", "no", "nos", "p", "pp", "vol");

    /** May stand last in a sentence: the next word's capital tells. */
    private static final Set<String> TRAILING =
            Set.of("cm", "etc", "ft", "g", "in", "kg", "lb", "lbs", "mg", "ml", "mm", "oz", "pt", "qt", "yd");

    private static final Pattern DOTTED = Pattern.compile("\\p{L}(?:\\.\\p{L})+");

    /** The words of a text in their order. */
    static List<Token> of(String text) {
        List<String> pieces =
                GAP.splitAsStream(text).filter(piece -> !piece.isEmpty()).toList();
        List<Token> tokens = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            String piece = BEFORE.matcher(pieces.get(i)).replaceFirst("");
            String word = AFTER.matcher(piece).replaceFirst("");
            if (!word.isEmpty()) {
                String next = i + 1 < pieces.size() ? pieces.get(i + 1) : "";
                tokens.add(new Token(word, ends(word, piece.substring(word.length()), next)));
            } else if (END.matcher(pieces.get(i)).find() && !tokens.isEmpty()) {
                // A mark that stands apart, as in "Is it clean ?", ends the sentence of the word before it.
                Token last = tokens.remove(tokens.size() - 1);
                tokens.add(new Token(last.word, true));
            }
        }
        return List.copyOf(tokens);
    }

    private static boolean ends(String word, String marks, String next) {
        if (!END.matcher(marks).find()) {
            return false;
        }
        String bare = BEFORE.matcher(next).replaceFirst("");
        if (bare.isEmpty() || marks.contains("!") || marks.contains("?")) {
            return true;
        }
        String small = word.toLowerCase(Locale.ROOT);
        if (LEADING.contains(small)) {
            return false;
        }
        if (BEFORE_FIGURE.contains(small)) {
            return !Character.isDigit(bare.charAt(0));
        }
        boolean abbreviation = TRAILING.contains(small) || DOTTED.matcher(word).matches();
        return !abbreviation || Character.isUpperCase(bare.charAt(0));
    }
}
