package hutchleaf.content;

import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Library;
import hutchleaf.model.Routine;
import hutchleaf.model.Subject;
import hutchleaf.model.Topic;
import hutchleaf.model.Wording;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The door of this stage: a content tree in, the library out, or every mistake in it. */
public final class LibraryReader {
    private static final String STATIONS = "routine/stations.md";
    private static final String SCORE_SHEET = "contest/scoresheet.md";
    private static final String BLUEPRINT = "contest/questions.md";
    private static final String DIVISIONS = "contest/divisions.md";
    private static final String WENT_WELL = "contest/went-well.md";
    private static final String PACKET = "contest/packet.md";
    private static final String HELP = "contest/accommodation.md";
    private static final String BREEDS = "breeds/breeds.md";
    private static final String COLOURS = "colours/colours.md";
    private static final String FACTS = "facts.md";
    private static final String SOURCES = "sources.md";
    private static final String RETIRED = "words/retired.md";
    private static final String LABEL_IT = "figures/label-it.md";
    private static final String LABELS = "words/labels.md";
    private static final String SPELLING = "words/spelling.md";
    private static final String FORMS = "words/forms.md";
    private static final String EVERYDAY = "words/everyday.md";
    private static final List<String> DATA = List.of(
            STATIONS,
            SCORE_SHEET,
            BLUEPRINT,
            DIVISIONS,
            WENT_WELL,
            PACKET,
            HELP,
            BREEDS,
            COLOURS,
            FACTS,
            SOURCES,
            RETIRED,
            LABEL_IT,
            LABELS,
            SPELLING,
            FORMS,
            EVERYDAY);

    private final ContentTree tree;
    private final Problems problems;

    private LibraryReader(ContentTree tree, Problems problems) {
        this.tree = tree;
        this.problems = problems;
    }

    /** Reads the whole tree; empty when there was an error. */
    public static Optional<Library> read(ContentTree tree, Problems problems) {
        return new LibraryReader(tree, problems).read();
    }

    private Optional<Library> read() {
        List<Topic> topics = new ArrayList<>();
        for (String path : tree.files(".md")) {
            if (!DATA.contains(path) && isTopic(path)) {
                topics.add(TopicReader.read(file(path), path, problems));
            }
        }
        List<Breed> breeds = TablesReader.breeds(file(BREEDS), problems);
        List<Colour> colours = TablesReader.colours(file(COLOURS), problems);
        topics.addAll(DataTopics.of(breeds, colours));
        topics.sort(Comparator.comparing((Topic topic) -> topic.head().subject())
                .thenComparing(topic -> topic.head().code())
                .thenComparing(topic -> topic.head().path()));
        Routine routine = StationsReader.read(file(STATIONS), problems);
        Library library = new Library(
                topics,
                routine,
                new Library.Contest(
                        ContestReader.scoreSheets(file(SCORE_SHEET), problems),
                        ContestReader.blueprint(file(BLUEPRINT), problems),
                        ContestReader.divisions(file(DIVISIONS), problems),
                        ContestReader.wentWell(file(WENT_WELL), problems),
                        PacketReader.read(file(PACKET), problems),
                        HelpReader.read(file(HELP), routine, problems)),
                new Library.Tables(
                        TablesReader.facts(file(FACTS), problems),
                        TablesReader.sources(file(SOURCES), problems),
                        breeds,
                        colours,
                        DrawingReader.read(tree, problems),
                        TablesReader.labelIt(file(LABEL_IT), problems)),
                new Wording(
                        WordingReader.spellings(file(SPELLING), problems),
                        WordingReader.onlyAmerican(file(SPELLING), problems),
                        WordingReader.forms(file(FORMS), problems),
                        WordingReader.labels(file(LABELS), problems),
                        WordingReader.everyday(file(EVERYDAY), problems)));
        new CrossCheck(library, tree, RetiredCodes.read(file(RETIRED), problems), problems).check();
        return problems.hasErrors() ? Optional.empty() : Optional.of(library);
    }

    private boolean isTopic(String path) {
        String folder = path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
        boolean topic = Subject.of(folder).isPresent();
        if (!topic) {
            problems.add(
                    tree.place(path),
                    "a Markdown file in " + (folder.isEmpty() ? "no subject's folder" : "'" + folder + "'"),
                    NearMiss.mend(folder, Subject.folders()));
        }
        return topic;
    }

    private MarkdownFile file(String path) {
        Optional<String> text = tree.text(path);
        if (text.isEmpty()) {
            problems.add(tree.place(path), "the file is missing", "add it; DEVELOPERS.md shows its form");
        }
        return MarkdownFile.read(tree.place(path), path, text.orElse("---\ntitle: missing\n---\n"), problems);
    }
}
