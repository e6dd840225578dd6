package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Inline;
import hutchleaf.model.Library;
import hutchleaf.model.Section;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Checks what no single file can know: codes, words, links, figures, facts and sources that point across the tree. */
final class CrossCheck {
    private static final String COMMON_PRACTICE = "common practice";

    private final Library library;
    private final ContentTree tree;
    private final Set<CardCode> retired;
    private final Problems problems;

    CrossCheck(Library library, ContentTree tree, Set<CardCode> retired, Problems problems) {
        this.library = library;
        this.tree = tree;
        this.retired = retired;
        this.problems = problems;
    }

    void check() {
        codes();
        terms();
        topicCodes();
        library.topics().forEach(this::topic);
    }

    private void codes() {
        Set<CardCode> used = new TreeSet<>(retired);
        Map<CardCode, List<Card>> byCode = new HashMap<>();
        List<Card> cards = library.topics().stream()
                .flatMap(topic -> topic.practice().cards().stream())
                .toList();
        cards.forEach(card -> used.add(card.code()));
        for (Card card : cards) {
            List<Card> same = byCode.computeIfAbsent(card.code(), code -> new ArrayList<>());
            if (retired.contains(card.code())) {
                problems.add(card.at(), "the code " + card.code() + " is retired", "use " + free(card.code(), used));
            }
            same.stream()
                    .filter(other -> other.levels().overlaps(card.levels()))
                    .findFirst()
                    .ifPresent(other -> problems.add(
                            card.at(),
                            "the code " + card.code() + " is taken by the card at " + other.at(),
                            "use " + free(card.code(), used)));
            same.add(card);
        }
    }

    /** The next code of the group that no card has. */
    private static CardCode free(CardCode taken, Set<CardCode> used) {
        int number = 1;
        while (used.contains(new CardCode(taken.group(), number))) {
            number++;
        }
        return new CardCode(taken.group(), number);
    }

    private void terms() {
        Siblings siblings = new Siblings(problems);
        library.topics().stream()
                .flatMap(topic -> topic.practice().terms().stream())
                .forEach(term -> siblings.note("word", term.term(), term.levels(), term.at()));
    }

    private void topicCodes() {
        Map<Integer, Topic> byCode = new HashMap<>();
        for (Topic topic : library.topics()) {
            Topic other = byCode.putIfAbsent(topic.head().code(), topic);
            if (other != null) {
                int next = byCode.keySet().stream()
                                .mapToInt(Integer::intValue)
                                .filter(code -> code < DataTopics.FIRST_CODE)
                                .max()
                                .orElse(0)
                        + 1;
                problems.add(
                        topic.head().credits().at(),
                        "the code " + topic.head().code() + " is taken by "
                                + other.head().path(),
                        "give each topic its own, for example " + next);
            }
        }
    }

    private void topic(Topic topic) {
        for (String source : topic.head().credits().sources()) {
            if (!source.equals(COMMON_PRACTICE) && !library.tables().sources().containsKey(source)) {
                problems.add(
                        topic.head().credits().at(),
                        "unknown source '" + source + "'",
                        NearMiss.of(source, library.tables().sources().keySet())
                                .map(near -> "did you mean '" + near + "'?")
                                .orElse("add it to sources.md, or write common practice"));
            }
        }
        for (Section section : topic.sections()) {
            section.blocks().forEach(block -> block(block));
        }
        Topic.Practice practice = topic.practice();
        practice.terms().forEach(term -> words(term.meaning(), term.at()));
        practice.cards().forEach(card -> {
            words(card.question(), card.at());
            words(card.answer(), card.at());
            card.picture().ifPresent(this::block);
        });
        practice.questions()
                .forEach(question -> Stream.concat(Stream.of(question.question()), question.points().stream())
                        .forEach(words -> words(words, question.at())));
        practice.selfTest().forEach(item -> item.words().forEach(words -> words(words, item.at())));
    }

    private void block(Block block) {
        if (block instanceof Block.Picture picture
                && !library.tables().drawings().containsKey(picture.file())) {
            problems.add(
                    picture.at(),
                    "no figure '" + picture.file() + "'",
                    NearMiss.mend(picture.file(), tree.files(".svg")));
        }
        block.words().forEach(words -> words(words, block.at()));
    }

    private void words(Words words, Place at) {
        words.all().forEach(run -> {
            if (run instanceof Inline.Link link && library.topic(link.topic()).isEmpty()) {
                List<String> paths = library.topics().stream()
                        .map(topic -> topic.head().path())
                        .toList();
                problems.add(
                        at,
                        "no topic '" + link.topic() + "' to link to",
                        NearMiss.of(link.topic(), paths)
                                .map(near -> "did you mean '" + near + "'?")
                                .orElse("link to a topic of the tree"));
            }
            if (run instanceof Inline.Blank blank && blank.name().startsWith(Blanks.FACT)) {
                String id = blank.name().substring(Blanks.FACT.length());
                if (!library.tables().facts().containsKey(id)) {
                    problems.add(
                            at,
                            "no fact '" + id + "' in facts.md",
                            NearMiss.mend(id, library.tables().facts().keySet()));
                }
            }
        });
    }
}
