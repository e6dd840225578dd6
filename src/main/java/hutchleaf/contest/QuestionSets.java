package hutchleaf.contest;

import hutchleaf.contest.QuestionSet.Asked;
import hutchleaf.edition.Edition;
import hutchleaf.model.Blueprint;
import hutchleaf.model.Subject;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Draws sets that are as hard as each other. Each kind's questions are put in order by how near below the edition's
 * level they start, by chance within one level; the first of them, as many as all sets need, are dealt out in turn, and
 * no set gets two of one topic while it can be helped.
 */
public final class QuestionSets {
    private static final Place BLUEPRINT = Place.whole("content/contest/questions.md");

    private final Edition edition;
    private final int sets;
    private final Random random;
    private final Problems problems;
    private final Set<Asked> used = new HashSet<>();

    private QuestionSets(Edition edition, int sets, long seed, Problems problems) {
        this.edition = edition;
        this.sets = sets;
        this.random = new Random(seed);
        this.problems = problems;
    }

    /**
     * Sets that share no question; the same input gives the same sets.
     *
     * @param sets how many, 1 to 26
     * @return none when the tree has too few questions of a kind; the problem says how many are missing
     */
    public static List<QuestionSet> draw(Edition edition, int sets, long seed, Problems problems) {
        return new QuestionSets(edition, sets, seed, problems).draw();
    }

    private List<QuestionSet> draw() {
        List<List<Asked>> hands = Stream.generate(() -> (List<Asked>) new ArrayList<Asked>())
                .limit(sets)
                .toList();
        boolean enough = true;
        for (Blueprint.Kind kind : edition.library().contest().blueprint().kinds()) {
            Optional<List<Asked>> picked = pick(kind);
            picked.ifPresent(questions -> deal(questions, kind.count(), hands));
            enough &= picked.isPresent();
        }
        return enough
                ? IntStream.range(0, sets)
                        .mapToObj(index -> new QuestionSet(String.valueOf((char) ('A' + index)), hands.get(index)))
                        .toList()
                : List.of();
    }

    private Optional<List<Asked>> pick(Blueprint.Kind kind) {
        List<Asked> candidates = edition.library().topics().stream()
                .flatMap(topic -> topic.practice().questions().stream()
                        .filter(question -> question.levels().holds(edition.level()))
                        .filter(question -> kind.takes(topic, question))
                        .map(question -> new Asked(question, topic.head())))
                .filter(asked -> !used.contains(asked))
                .filter(this::shown)
                .collect(Collectors.toCollection(ArrayList::new));
        int needed = sets * kind.count();
        if (candidates.size() < needed) {
            report(kind, candidates.size(), needed);
            return Optional.empty();
        }
        Collections.shuffle(candidates, random);
        candidates.sort(
                Comparator.comparing((Asked asked) -> asked.question().levels().from(), Comparator.reverseOrder()));
        List<Asked> picked = candidates.subList(0, needed);
        used.addAll(picked);
        return Optional.of(picked);
    }

    /** Whether the level meets the question's topic: stops that it does not show are not asked about. */
    private boolean shown(Asked asked) {
        return edition.all().anyMatch(leaf -> leaf.head().equals(asked.topic()));
    }

    private static void deal(List<Asked> picked, int each, List<List<Asked>> hands) {
        List<Asked> left = new ArrayList<>(picked);
        for (int round = 0; round < each; round++) {
            for (List<Asked> hand : hands) {
                Asked next = left.stream()
                        .filter(asked ->
                                hand.stream().noneMatch(held -> held.topic().equals(asked.topic())))
                        .findFirst()
                        .orElse(left.get(0));
                left.remove(next);
                hand.add(next);
            }
        }
    }

    private void report(Blueprint.Kind kind, int found, int needed) {
        String level = edition.level().word();
        int missing = needed - found;
        String where = kind.subjects().isEmpty()
                ? "mark it (own rabbit)"
                : "in content/"
                        + kind.subjects().stream().map(Subject::folder).collect(Collectors.joining(", content/"));
        problems.add(
                BLUEPRINT,
                "the kind '" + kind.name() + "' lacks " + missing + (missing == 1 ? " question" : " questions")
                        + " for " + level + ": " + sets + " sets need " + needed + ", the tree has " + found,
                "write " + missing + " more under ## Judge may ask for " + level + ", " + where);
    }
}
