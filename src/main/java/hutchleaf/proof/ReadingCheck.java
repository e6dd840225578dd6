package hutchleaf.proof;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.model.Level;
import hutchleaf.problem.Place;
import hutchleaf.proof.Passage.Role;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** How hard each topic and each edition reads, against the bands of its level. */
final class ReadingCheck {
    /** No formula is reliable on less (Spache and Dale-Chall read samples of 100 words). */
    private static final int FEWEST_WORDS = 100;

    /** Own rule: what a child of six reads in one breath. */
    private static final int LONGEST_PRIMARY_SENTENCE = 12;

    private final Material material;
    private final Findings findings;
    private final List<Reading> readings = new ArrayList<>();

    /** Four editions read most lines again; each is cut into words once, and each word counted once. */
    private final Map<String, List<Token>> tokens = new HashMap<>();

    private final Map<String, Integer> syllables = new HashMap<>();

    private ReadingCheck(Material material, Findings findings) {
        this.material = material;
        this.findings = findings;
    }

    static List<Reading> measure(Material material, Findings findings) {
        ReadingCheck check = new ReadingCheck(material, findings);
        material.editions().forEach(check::edition);
        check.primarySentences();
        return check.readings;
    }

    private void edition(Edition edition) {
        Level level = edition.level();
        Set<String> trade = TermCheck.words(material, level);
        List<Passage> mine = material.passages().stream()
                .filter(passage -> passage.levels().holds(level))
                .toList();
        Place whole = Roots.place(material.library());
        read(level, Reading.Part.GUIDE, Optional.empty(), whole, guide(mine), trade);
        read(level, Reading.Part.DECK, Optional.empty(), whole, cards(mine), trade);
        for (Leaf leaf : edition.all().toList()) {
            List<Passage> own = material.of(leaf, level);
            read(
                    level,
                    Reading.Part.GUIDE,
                    Optional.of(leaf.head().path()),
                    leaf.head().credits().at(),
                    guide(own),
                    trade);
        }
    }

    private static List<String> guide(List<Passage> passages) {
        return passages.stream()
                .filter(passage -> passage.role().runs())
                .map(Passage::text)
                .toList();
    }

    private static List<String> cards(List<Passage> passages) {
        return passages.stream()
                .filter(passage -> passage.role() == Role.QUESTION || passage.role() == Role.ANSWER)
                .map(Passage::text)
                .toList();
    }

    private void read(
            Level level, Reading.Part part, Optional<String> topic, Place at, List<String> texts, Set<String> trade) {
        TextCount count = texts.stream().map(text -> count(text, trade)).reduce(TextCount.NONE, TextCount::plus);
        boolean enough = count.words() >= FEWEST_WORDS;
        OptionalDouble grade = enough ? Readability.fleschKincaid(count) : OptionalDouble.empty();
        OptionalDouble ease = enough ? Readability.fleschReadingEase(count) : OptionalDouble.empty();
        boolean primary = level == Level.PRIMARY;
        OptionalDouble spache = enough && primary ? spache(texts, count) : OptionalDouble.empty();
        OptionalDouble daleChall = enough && !primary ? daleChall(texts, count) : OptionalDouble.empty();
        OptionalDouble length = count.wordsPerSentence();
        double share = count.words() == 0 ? 0 : (double) count.tradeWords() / count.words();
        readings.add(new Reading(
                level, part, topic, count.words(), grade, length, new Reading.Extra(ease, share, spache, daleChall)));
        Rule rule = topic.isPresent() ? Rule.READING_TOPIC : Rule.READING_EDITION;
        String what = topic.isPresent() ? "the topic" : "the " + level.word() + " " + part.word();
        GradeBand band = GradeBand.of(level);
        compare(rule, at, what + " reads at grade", level, grade, band.fleschKincaid());
        band.spache().ifPresent(bounds -> compare(rule, at, what + " reads at Spache grade", level, spache, bounds));
    }

    private TextCount count(String text, Set<String> trade) {
        return TextCount.of(
                tokens.computeIfAbsent(text, Token::of),
                word -> trade.contains(word.toLowerCase(Locale.ROOT)),
                word -> syllables.computeIfAbsent(word, Syllables::in));
    }

    private OptionalDouble spache(List<String> texts, TextCount count) {
        return material.settings()
                .spache()
                .map(list -> Readability.spache(count, distinctUnfamiliar(list, texts)))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble daleChall(List<String> texts, TextCount count) {
        return material.settings()
                .daleChall()
                .map(list -> Readability.daleChall(count, list.unfamiliar(String.join("\n", texts))))
                .orElse(OptionalDouble.empty());
    }

    /** The text is cut at its lines, so that no word runs into the next line's. */
    private static int distinctUnfamiliar(WordList list, List<String> texts) {
        return list.distinctUnfamiliar(String.join("\n", texts));
    }

    private void compare(Rule rule, Place at, String what, Level level, OptionalDouble grade, GradeBand.Bounds bounds) {
        if (grade.isEmpty()) {
            return;
        }
        double found = grade.getAsDouble();
        String said = String.format(Locale.ROOT, "%s %.1f for %s", what, found, level.word());
        String mend = "use shorter sentences and words";
        if (found > bounds.failAbove()) {
            findings.error(rule, at, said + ", over " + bounds.failAbove(), mend);
        } else if (found > bounds.warnAbove()) {
            findings.warn(rule, at, said + ", over " + bounds.warnAbove(), mend);
        }
    }

    private void primarySentences() {
        for (Passage passage : material.passages()) {
            if (passage.levels().from() == Level.PRIMARY && passage.role().runs()) {
                for (String sentence : Sentences.of(passage.text())) {
                    int words = Sentences.words(sentence).size();
                    if (words > LONGEST_PRIMARY_SENTENCE) {
                        findings.error(
                                Rule.READING_SENTENCE,
                                passage.at(),
                                "a sentence of " + words + " words for primary: '" + sentence + "'",
                                "keep it to " + LONGEST_PRIMARY_SENTENCE);
                    }
                }
            }
        }
    }
}
