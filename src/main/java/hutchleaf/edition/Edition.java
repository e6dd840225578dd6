package hutchleaf.edition;

import hutchleaf.model.Card;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Order;
import hutchleaf.model.Routine;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Source;
import hutchleaf.model.Subject;
import hutchleaf.model.Term;
import hutchleaf.model.Topic;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that one level gets from the library.
 *
 * @param order the order in which the level shows its stops
 * @param leaves its topics outside the routine, by subject and code
 */
public record Edition(Level level, Order order, List<Stop> stops, List<Leaf> leaves, Library library) {
    private static final List<Kind> EACH_STOP = List.of(Kind.IN_SHORT, Kind.STEPS, Kind.CAUTION, Kind.SAY_IT);

    public Edition {
        stops = List.copyOf(stops);
        leaves = List.copyOf(leaves);
    }

    /** Cuts the library to a level; a stop without what its pages need is an error. */
    public static Edition of(Library library, Level level, Problems problems) {
        Routine routine = library.routine();
        Order order = routine.orderFor(level);
        List<Stop> stops = order.stops().stream()
                .map(no -> stop(library, level, no, problems))
                .flatMap(Optional::stream)
                .toList();
        List<Leaf> leaves = library.topics().stream()
                .filter(topic -> topic.head().subject() != Subject.ROUTINE)
                .filter(topic -> topic.head().levels().holds(level))
                .map(topic -> Leaf.of(topic, level))
                .toList();
        return new Edition(level, order, stops, leaves, library);
    }

    private static Optional<Stop> stop(Library library, Level level, int no, Problems problems) {
        Optional<Topic> topic = library.topics().stream()
                .filter(candidate -> candidate.head().subject() == Subject.ROUTINE)
                .filter(candidate -> candidate.head().code() == no
                        && candidate.head().levels().holds(level))
                .findFirst();
        if (topic.isEmpty()) {
            problems.add(
                    Place.whole("content/routine"),
                    "stop " + no + " has no topic for " + level.word(),
                    "add one with station: " + no);
            return Optional.empty();
        }
        Leaf leaf = Leaf.of(topic.get(), level);
        for (Kind kind : EACH_STOP) {
            if (leaf.section(kind).isEmpty()) {
                problems.add(
                        leaf.head().credits().at(),
                        "stop " + no + " has no '" + kind.heading() + "' for " + level.word(),
                        "add ## " + kind.heading() + " for it");
            }
        }
        Optional<ScoreSheet.Block> scored = library.contest()
                .sheetFor(level)
                .flatMap(sheet -> sheet.blocks().stream()
                        .filter(block -> block.stops().contains(no))
                        .findFirst());
        return Optional.of(new Stop(library.routine().station(no), leaf, scored));
    }

    /** Every leaf: the stops' first, then the topics'. */
    public Stream<Leaf> all() {
        return Stream.concat(stops.stream().map(Stop::leaf), leaves.stream());
    }

    /** Leaves outside the routine, in groups of one subject. */
    public List<Leaf> leaves(Subject subject) {
        return leaves.stream().filter(leaf -> leaf.head().subject() == subject).toList();
    }

    /** The deck: every card of the level once, by code. Stops that the level does not show have their cards too, when they are for it. */
    public List<Card> deck() {
        return library.topics().stream()
                .flatMap(topic -> topic.practice().cards().stream())
                .filter(card -> card.levels().holds(level))
                .sorted(Comparator.comparing(Card::code))
                .toList();
    }

    /** The title printed on the cards of a code's group: the stop's short name or the topic's title. */
    public String groupTitle(int group) {
        return library.topics().stream()
                .filter(topic -> topic.head().code() == group)
                .map(topic -> topic.head().subject() == Subject.ROUTINE
                        ? library.routine().station(group).shortName()
                        : topic.head().title())
                .findFirst()
                .orElse("");
    }

    /** Words to know, A to Z. */
    public List<Term> terms() {
        return library.topics().stream()
                .flatMap(topic -> topic.practice().terms().stream())
                .filter(term -> term.levels().holds(level))
                .sorted(Comparator.comparing((Term term) -> term.term().toLowerCase(Locale.ROOT))
                        .thenComparing(Term::at))
                .toList();
    }

    /** Sources that the level's leaves stand on, by id. */
    public List<Source> sources() {
        List<String> named = new ArrayList<>();
        all().forEach(leaf -> named.addAll(leaf.head().credits().sources()));
        return named.stream()
                .distinct()
                .map(id -> library.tables().sources().get(id))
                .filter(Objects::nonNull)
                .sorted(Comparator.comparing(Source::publisher).thenComparing(Source::title))
                .toList();
    }

    /** The bands of the first rule set, for the level: whom a cover speaks of when no club is named. */
    public Optional<DivisionRule> division() {
        return library.contest().divisions().stream()
                .filter(rule -> rule.level() == level)
                .findFirst();
    }
}
