package hutchleaf.content;

import hutchleaf.content.FrontMatter.Field;
import hutchleaf.model.Card;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Routine;
import hutchleaf.model.Section;
import hutchleaf.model.SelfTestItem;
import hutchleaf.model.Subject;
import hutchleaf.model.Term;
import hutchleaf.model.Topic;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one topic: its front matter, then each section by what its heading means. */
final class TopicReader {
    /** Topics without a stop number their cards from here up; 20 is kept for cards on the member's own rabbit. */
    static final int FIRST_FREE_CODE = 21;

    private static final List<String> KEYS = List.of("title", "level", "station", "code", "sources", "breed");
    private static final int LONGEST_TITLE = 40;

    /** Sections that hold ### parts and nothing else. */
    private static final List<String> OF_PARTS = List.of("Words", "Cards", "Judge may ask", "Self-test");

    private final MarkdownFile file;
    private final String path;
    private final Problems problems;
    private final List<Section> sections = new ArrayList<>();
    private final List<Term> terms = new ArrayList<>();
    private final List<Card> cards = new ArrayList<>();
    private final List<JudgeQuestion> questions = new ArrayList<>();
    private final List<SelfTestItem> selfTest = new ArrayList<>();

    private TopicReader(MarkdownFile file, String path, Problems problems) {
        this.file = file;
        this.path = path;
        this.problems = problems;
    }

    /**
     * Reads a topic.
     *
     * @param path from the content root; its folder is a subject
     */
    static Topic read(MarkdownFile file, String path, Problems problems) {
        return new TopicReader(file, path, problems).read();
    }

    private Topic read() {
        file.front().allowOnly(KEYS, problems);
        file.lead()
                .forEach(block -> problems.add(
                        block.at(), "text above the first heading", "put it under a ## heading such as ## In short"));
        Topic.Head head = head();
        if (file.parts().isEmpty()) {
            problems.add(file.at().atLine(1), "the topic has no sections", "add at least ## In short");
        }
        Siblings siblings = new Siblings(problems);
        for (Part part : file.parts()) {
            Levels levels = Siblings.narrowed(part, head.levels(), problems);
            siblings.note("section", part.heading().text(), levels, part.at());
            read(part, levels, head);
        }
        return new Topic(head, sections, new Topic.Practice(terms, cards, questions, selfTest));
    }

    private void read(Part part, Levels levels, Topic.Head head) {
        if (OF_PARTS.contains(part.heading().text())) {
            part.blocks()
                    .forEach(block -> problems.add(
                            block.at(),
                            "text right under '" + part.heading().text() + "'",
                            "put it under a ### heading of its own"));
        }
        switch (part.heading().text()) {
            case "Words" -> terms.addAll(new TermReader(problems).read(part, levels));
            case "Cards" -> cards.addAll(new CardReader(head.code(), problems).read(part, levels));
            case "Judge may ask" -> questions.addAll(new QuestionReader(problems).read(part, levels));
            case "Self-test" -> selfTest.addAll(new SelfTestReader(problems).read(part, levels));
            default -> sections.add(SectionReader.read(part, levels, problems));
        }
    }

    private Topic.Head head() {
        FrontMatter front = file.front();
        String title = front.require("title", problems);
        if (title.length() > LONGEST_TITLE) {
            problems.add(
                    front.field("title").orElseThrow().at(),
                    "the title has " + title.length() + " letters",
                    "keep it within " + LONGEST_TITLE);
        }
        Optional<Integer> station = front.field("station").flatMap(field -> number(field, 1, Routine.STOPS));
        Topic.Credits credits = new Topic.Credits(
                file.at().atLine(1),
                front.field("sources").map(Field::list).orElse(List.of()),
                front.field("breed").map(Field::value));
        return new Topic.Head(path, new Quotes().curl(title), levels(front), station, code(front, station), credits);
    }

    private Levels levels(FrontMatter front) {
        String words = front.require("level", problems);
        return Levels.parse(words).orElseGet(() -> {
            front.field("level")
                    .ifPresent(field -> problems.add(
                            field.at(), "unknown level '" + words + "'", NearMiss.mend(words, Level.words())));
            return Levels.ALL;
        });
    }

    private int code(FrontMatter front, Optional<Integer> station) {
        Optional<Field> written = front.field("code");
        if (path.startsWith(Subject.ROUTINE.folder() + "/")) {
            if (station.isEmpty()) {
                problems.add(file.at().atLine(1), "no 'station:' in the front matter", "add a line station: 1 to 16");
            }
            written.ifPresent(field -> problems.add(
                    field.at(), "a stop has no code of its own", "take the line out; its number is the code"));
            return station.orElse(1);
        }
        if (written.isEmpty()) {
            problems.add(
                    file.at().atLine(1),
                    "no 'code:' in the front matter",
                    "add a line code: with a number from " + FIRST_FREE_CODE + " up");
        }
        return written.flatMap(field -> number(field, FIRST_FREE_CODE, 999)).orElse(FIRST_FREE_CODE);
    }

    private Optional<Integer> number(Field field, int least, int most) {
        if (field.value().matches("\\d{1,3}")) {
            int number = Integer.parseInt(field.value());
            if (number >= least && number <= most) {
                return Optional.of(number);
            }
        }
        Place at = field.at();
        problems.add(
                at, "cannot use the number '" + field.value() + "'", "write a number from " + least + " to " + most);
        return Optional.empty();
    }
}
