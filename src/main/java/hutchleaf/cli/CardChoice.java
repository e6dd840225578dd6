package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.edition.StudyOrder;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Topic;
import hutchleaf.page.CardPapers;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardForm;
import hutchleaf.sheet.CardMaking;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Chooses the cards that were asked for, file by file. */
final class CardChoice {
    private static final String FOLDER = "cards/flashcards-";

    private final Library library;
    private final CardsOptions options;
    private final CardsOptions.Which which;
    private final Problems problems;

    CardChoice(Library library, CardsOptions options, Problems problems) {
        this.library = library;
        this.options = options;
        this.which = options.which();
        this.problems = problems;
    }

    /** One job for each file; none, with a problem, where what was asked for is not there. */
    List<CardJob> jobs() {
        List<CardJob> jobs = which.codes().isEmpty() ? decks() : again();
        if (jobs.isEmpty() && !problems.hasErrors()) {
            problems.add(
                    Place.whole("cards"), "no card is all that was asked for", "ask for less, or for another level");
        }
        return problems.hasErrors() ? List.of() : jobs;
    }

    /** Named cards on as few sheets as they take: one file, whatever their levels. */
    private List<CardJob> again() {
        List<Card> cards = new CardsNamed(library, problems).find(which.codes(), which.level());
        Level level = which.level().orElseGet(() -> CardsNamed.levelOf(cards));
        String whose = which.level().map(named -> named.word() + "-").orElse("");
        return List.of(new CardJob(
                CardsNamed.edition(library, level),
                cards,
                form(level),
                FOLDER + whose + "again-" + made(form(level)),
                "Cards again",
                false));
    }

    private List<CardJob> decks() {
        Optional<Set<Card>> topic = which.topic().map(this::cardsOf);
        List<CardJob> jobs = new ArrayList<>();
        for (Level level : which.level().map(List::of).orElseGet(() -> Arrays.asList(Level.values()))) {
            Edition edition = CardsNamed.edition(library, level);
            List<Card> cards = since(edition).stream()
                    .filter(card -> !which.core() || card.need() == Card.Need.CORE)
                    .filter(card -> topic.map(set -> set.contains(card)).orElse(true))
                    .toList();
            if (!cards.isEmpty()) {
                String file = FOLDER + level.word() + "-" + made(form(level)) + chosen();
                jobs.add(new CardJob(edition, cards, form(level), file, name(level), true));
            }
        }
        return jobs;
    }

    private List<Card> since(Edition edition) {
        return which.since()
                .map(before -> StudyOrder.newSince(edition.deck(), CardsNamed.edition(library, before)))
                .orElseGet(edition::deck);
    }

    private Set<Card> cardsOf(String asked) {
        List<Topic> topics =
                library.topics().stream().filter(topic -> isNamed(topic, asked)).toList();
        if (topics.isEmpty()) {
            problems.add(
                    Place.whole("--topic '" + asked + "'"),
                    "there is no such topic",
                    NearMiss.of(
                                    asked,
                                    library.topics().stream()
                                            .flatMap(topic ->
                                                    List.of(
                                                            topic.head().title(),
                                                            topic.head().path())
                                                            .stream())
                                            .toList())
                            .map(near -> "did you mean '" + near + "'?")
                            .orElse("write its title or its path, for example health/sore-hocks.md"));
        }
        return topics.stream()
                .flatMap(topic -> topic.practice().cards().stream())
                .collect(Collectors.toCollection(HashSet::new));
    }

    private static boolean isNamed(Topic topic, String asked) {
        String wanted = plain(asked).replaceFirst("^content/", "");
        return plain(topic.head().title()).equals(wanted)
                || topic.head().path().equals(wanted)
                || topic.head().path().equals(wanted + ".md");
    }

    /** Small letters and typewriter quotes, as people type them. */
    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace('\u2019', '\'').replace('\\', '/');
    }

    private CardForm form(Level level) {
        return new CardForm(options.format().orElse(CardPapers.usualForm(level).format()), options.making());
    }

    /** Size and way of making, as far as it is not the usual. */
    private static String made(CardForm form) {
        CardMaking making = form.making();
        return form.format().word()
                + (making.way() == CardMaking.Way.FOLD_SHEET
                        ? ""
                        : "-" + making.way().word())
                + (making.turn() == CardMaking.Turn.UP ? "-flip-up" : "");
    }

    /** Which cards, as far as it is not the whole deck. */
    private String chosen() {
        return which.topic()
                        .map(topic -> "-"
                                + topic.toLowerCase(Locale.ROOT)
                                        .replaceFirst("\\.md$", "")
                                        .replaceAll("[^a-z0-9]+", "-")
                                        .replaceAll("^-|-$", ""))
                        .orElse("")
                + (which.core() ? "-core" : "")
                + which.since().map(level -> "-new-since-" + level.word()).orElse("");
    }

    private String name(Level level) {
        if (which.topic().isPresent()) {
            return level.title() + ", one topic";
        } else if (which.since().isPresent()) {
            return level.title() + ", new";
        }
        return level.title() + (which.core() ? " core" : " deck");
    }
}
