package hutchleaf.press;

import com.openhtmltopdf.util.OpenUtil;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.lang.Character.UnicodeScript;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.w3c.dom.Document;
import org.w3c.dom.Text;

/**
 * Looks for what the fonts cannot print, since the engine would put {@code #} in its place without a word. Scripts that
 * need shaping or run from right to left are refused even where a font has their letters: they would come out wrong.
 */
final class GlyphCheck {
    private static final Set<UnicodeScript> SCRIPTS = Set.of(
            UnicodeScript.LATIN,
            UnicodeScript.GREEK,
            UnicodeScript.CYRILLIC,
            UnicodeScript.COMMON,
            UnicodeScript.INHERITED);

    /** Scripts that need no shaping, for a font of the user's own. */
    private static final Set<UnicodeScript> WITH_A_FONT = Set.of(
            UnicodeScript.ARMENIAN,
            UnicodeScript.GEORGIAN,
            UnicodeScript.ETHIOPIC,
            UnicodeScript.HAN,
            UnicodeScript.HIRAGANA,
            UnicodeScript.KATAKANA,
            UnicodeScript.HANGUL);

    private GlyphCheck() {}

    static void check(Document document, Typefaces typefaces, Place fallback, Problems problems) {
        Dom.walk(document, node -> {
            if (node instanceof Text text) {
                check(text.getData(), typefaces, () -> Dom.place(text, fallback), problems);
            }
        });
    }

    /** Checks one line of text. */
    static void check(String text, Typefaces typefaces, Supplier<Place> at, Problems problems) {
        text.codePoints()
                .filter(codePoint -> !prints(codePoint, typefaces))
                .distinct()
                .forEach(codePoint -> add(codePoint, at.get(), problems));
    }

    private static boolean prints(int codePoint, Typefaces typefaces) {
        UnicodeScript script = UnicodeScript.of(codePoint);
        if (!SCRIPTS.contains(script) && !(typefaces.hasOwn() && WITH_A_FONT.contains(script))) {
            return false;
        }
        // The engine drops soft hyphens and the like; they need no glyph.
        return typefaces.has(codePoint)
                || Character.isWhitespace(codePoint)
                || !OpenUtil.isSafeFontCodePointToPrint(codePoint)
                || (!OpenUtil.isCodePointPrintable(codePoint) && Character.getType(codePoint) == Character.FORMAT);
    }

    private static void add(int codePoint, Place at, Problems problems) {
        UnicodeScript script = UnicodeScript.of(codePoint);
        boolean foreign = !SCRIPTS.contains(script);
        String what = String.format(
                Locale.ROOT,
                "the character '%s' (U+%04X%s) cannot be printed",
                Character.toString(codePoint),
                codePoint,
                foreign ? ", " + name(script) : "");
        if (WITH_A_FONT.contains(script)) {
            problems.add(at, what, "name a TrueType font that has it with --font, or write it in Latin letters");
        } else {
            problems.add(at, what, foreign ? "write it in Latin letters" : "write it in other signs");
        }
    }

    /** {@code OLD_ITALIC} as {@code Old Italic}. */
    private static String name(UnicodeScript script) {
        return Arrays.stream(script.name().split("_", -1))
                .map(word -> word.substring(0, 1) + word.substring(1).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
    }
}
