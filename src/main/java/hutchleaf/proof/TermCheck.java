package hutchleaf.proof;

import hutchleaf.model.Level;
import hutchleaf.model.Term;
import hutchleaf.proof.Passage.Role;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A trade word that a level reads is explained at that level or a younger one. */
final class TermCheck implements Check {
    private static final int LONGEST = 4;

    /** Far more often a verb than female rabbits. */
    private static final String VERB = "does";

    @Override
    public void check(Material material, Findings findings) {
        Map<String, Level> youngest = youngest(material);
        material.library().wording().everyday().forEach(youngest::remove);
        for (Passage passage : material.passages()) {
            if (passage.role() != Role.ALT && passage.role() != Role.TERM) {
                check(passage, youngest, findings);
            }
        }
    }

    /** The youngest level that gets each term. */
    static Map<String, Level> youngest(Material material) {
        Map<String, Level> youngest = new HashMap<>();
        for (Passage passage : material.passages()) {
            if (passage.role() == Role.TERM) {
                youngest.merge(
                        key(passage), passage.levels().from(), (one, other) -> one.compareTo(other) < 0 ? one : other);
            }
        }
        return youngest;
    }

    private static String key(Passage term) {
        return term.words().plain().toLowerCase(Locale.ROOT);
    }

    private static void check(Passage passage, Map<String, Level> youngest, Findings findings) {
        Set<String> said = new HashSet<>();
        for (String term : terms(passage.text(), youngest)) {
            Level from = youngest.get(term);
            if (from != null && passage.levels().from().compareTo(from) < 0 && said.add(term)) {
                findings.error(
                        Rule.WORD_UNDEFINED,
                        passage.at(),
                        "'" + term + "' is read from " + passage.levels().from().word() + " but explained from "
                                + from.word(),
                        "explain it for " + passage.levels().from().word()
                                + ", say it in other words, or list it in words/everyday.md");
            }
        }
    }

    /** Every glossary term in a text, longest match first, singular or plural. */
    private static List<String> terms(String text, Map<String, Level> known) {
        List<String> words = Sentences.words(text);
        List<String> found = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            int taken = 0;
            for (int length = Math.min(LONGEST, words.size() - at); length > 0 && taken == 0; length--) {
                Optional<String> term = known(String.join(" ", words.subList(at, at + length)), known);
                term.ifPresent(found::add);
                taken = term.isPresent() ? length : 0;
            }
            at += Math.max(1, taken);
        }
        return found;
    }

    /** The term that a phrase is, or is the plural of. */
    private static Optional<String> known(String phrase, Map<String, Level> known) {
        if (phrase.equals(VERB)) {
            return Optional.empty();
        } else if (known.containsKey(phrase) || !phrase.endsWith("s")) {
            return Optional.of(phrase).filter(known::containsKey);
        }
        String one = phrase.substring(0, phrase.length() - 1);
        return known.containsKey(one)
                ? Optional.of(one)
                : Optional.of(one.replaceFirst("e$", "")).filter(known::containsKey);
    }

    /** The single words of all terms a level has. */
    static Set<String> words(Material material, Level level) {
        Set<String> words = new HashSet<>();
        material.library().topics().stream()
                .flatMap(topic -> topic.practice().terms().stream())
                .filter(term -> term.levels().from().compareTo(level) <= 0)
                .map(Term::term)
                .forEach(term -> words.addAll(Sentences.words(term)));
        return words;
    }
}
