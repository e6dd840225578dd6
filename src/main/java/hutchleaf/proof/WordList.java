package hutchleaf.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Words that a reader is taken to know, from a file that the user names: the lists of Spache and of Dale and Chall are in
 * copyright and none comes with us. A listed word stands for its regular forms too.
 */
public final class WordList {
    private static final Pattern LETTERS = Pattern.compile("\\p{L}");
    private static final Pattern JOINT = Pattern.compile("[-\u2010\u2011/]");
    private static final Pattern CONTRACTED = Pattern.compile("(?:n't|'(?:d|ll|m|re|s|ve)?)$");
    private static final Pattern DOUBLED = Pattern.compile(".*([b-df-hj-np-tvz])\\1");
    private static final List<String> ENDINGS = List.of("s", "es", "ed", "er", "est", "ing");

    /** No stem is shorter: the s of "is" is no ending. */
    private static final int SHORTEST_STEM = 2;

    private final Set<String> words;

    private WordList(Set<String> words) {
        this.words = words;
    }

    /**
     * Reads a list in UTF-8, one word a line; what follows a # is a remark.
     *
     * @throws UncheckedIOException when the file cannot be read, or holds no word
     */
    public static WordList read(Path file) {
        try {
            String text = Files.readString(file);
            Set<String> words = (text.startsWith("\ufeff") ? text.substring(1) : text)
                    .lines()
                    .map(line -> plain(line.replaceFirst("#.*", "").strip()))
                    .filter(word -> !word.isEmpty())
                    .collect(Collectors.toUnmodifiableSet());
            if (words.isEmpty()) {
                throw new IOException(file + ": no words; write one a line");
            }
            return new WordList(words);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Whether the word or a word that it is a regular form of is listed: with -s, -es, -ed, -er, -est, -ing or a possessive, a
     * last consonant doubled, a last e dropped, a last y turned to i. A contraction is held with its first word, a hyphenated
     * word with all its parts, a figure always.
     */
    boolean holds(String word) {
        String plain = plain(word);
        return holdsForm(plain) || JOINT.splitAsStream(plain).allMatch(this::holdsForm);
    }

    /** How many words of the text are off the list, each counted as often as it stands: for Dale-Chall. */
    int unfamiliar(String runningText) {
        return (int) unheld(runningText).count();
    }

    /** How many words of the text are off the list, each counted once: for Spache. */
    int distinctUnfamiliar(String runningText) {
        return (int) unheld(runningText).distinct().count();
    }

    private Stream<String> unheld(String runningText) {
        return Token.of(runningText).stream().map(token -> plain(token.word())).filter(word -> !holds(word));
    }

    private boolean holdsForm(String word) {
        if (words.contains(word) || !LETTERS.matcher(word).find()) {
            return true;
        }
        String bare = CONTRACTED.matcher(word).replaceFirst("");
        return words.contains(bare)
                || ENDINGS.stream().filter(bare::endsWith).anyMatch(ending -> {
                    String stem = bare.substring(0, bare.length() - ending.length());
                    return stem.length() >= SHORTEST_STEM && stems(stem, ending).anyMatch(words::contains);
                });
    }

    /** What may have stood before the ending: groom-ed, hop(p)-ed, bak(e)-ed, carr(y)-ied. */
    private static Stream<String> stems(String stem, String ending) {
        if (ending.equals("s")) {
            return Stream.of(stem);
        }
        String shorter = stem.substring(0, stem.length() - 1);
        Stream<String> undone = DOUBLED.matcher(stem).matches()
                ? Stream.of(shorter)
                : stem.endsWith("i") ? Stream.of(shorter + "y") : Stream.empty();
        return Stream.concat(Stream.of(stem, stem + "e"), undone);
    }

    private static String plain(String word) {
        return word.replace('\u2019', '\'').toLowerCase(Locale.ROOT);
    }
}
