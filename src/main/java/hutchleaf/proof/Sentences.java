package hutchleaf.proof;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Cuts a text where a rule reads on its own: into sentences, and into words in lower case. */
final class Sentences {
    private static final Pattern END = Pattern.compile("(?<=[.!?])[\"”’]?\\s+");
    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}'’#-]+");

    private Sentences() {}

    static List<String> of(String text) {
        return Arrays.asList(END.split(text.strip(), -1));
    }

    static List<String> words(String text) {
        return NO_WORD.splitAsStream(text.toLowerCase(Locale.ROOT).replace('’', '\''))
                .map(word -> word.replaceAll("^[-']+|[-']+$", ""))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
