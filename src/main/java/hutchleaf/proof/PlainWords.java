package hutchleaf.proof;

import java.util.List;
import java.util.Set;

/** The words of a text that carry its meaning, each cut back to its stem's beginning, so that foot finds foot's. */
final class PlainWords {
    private static final Set<String> SMALL = Set.of(
            "a", "an", "the", "and", "or", "of", "to", "in", "on", "at", "by", "for", "with", "from", "is", "are",
            "was", "be", "it", "its", "this", "that", "these", "those", "you", "your", "i", "my", "we", "our", "they",
            "their", "do", "does", "did", "what", "which", "who", "how", "why", "when", "where", "as", "so", "if",
            "then", "than", "can", "will", "would", "should", "may", "must", "has", "have", "had", "there", "up", "out",
            "name", "say", "show", "tell", "called", "call", "one", "rabbit", "rabbits");

    private PlainWords() {}

    static List<String> of(String text) {
        return Sentences.words(text).stream()
                .filter(word -> !SMALL.contains(word))
                .map(PlainWords::stem)
                .toList();
    }

    private static String stem(String word) {
        String bare = word.replace("'s", "").replace("'", "");
        return bare.length() > 3 && bare.endsWith("s") && !bare.endsWith("ss")
                ? bare.substring(0, bare.length() - 1)
                : bare;
    }
}
