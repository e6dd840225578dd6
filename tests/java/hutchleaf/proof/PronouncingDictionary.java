package hutchleaf.proof;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The CMU Pronouncing Dictionary, as a library of the tests holds it: one entry a line, a word and its phones. */
final class PronouncingDictionary {
    private static final String FILE = "/edu/cmu/sphinx/models/en-us/cmudict-en-us.dict";

    /** The phones that are vowels: as many as a word has syllables. */
    private static final Set<String> VOWELS =
            Set.of("AA", "AE", "AH", "AO", "AW", "AY", "EH", "ER", "EY", "IH", "IY", "OW", "OY", "UH", "UW");

    private PronouncingDictionary() {}

    /** The syllables of every headword in plain letters, by its first entry. */
    static Map<String, Integer> syllables() throws IOException {
        Map<String, Integer> syllables = new LinkedHashMap<>();
        try (InputStream in = Objects.requireNonNull(PronouncingDictionary.class.getResourceAsStream(FILE), FILE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line : lines.lines().toList()) {
                List<String> entry = Arrays.asList(line.split(" "));
                if (entry.get(0).matches("[a-z]+")) {
                    int vowels = (int) entry.stream().filter(VOWELS::contains).count();
                    syllables.putIfAbsent(entry.get(0), vowels);
                }
            }
        }
        return syllables;
    }
}
