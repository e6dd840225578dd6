package hutchleaf.contest;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.edition.Edition;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.JudgeQuestion.About;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Library;
import hutchleaf.model.Subject;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the tests of the judge's paper start from: the embedded content, and topics with questions made for a test. */
public final class Samples {
    private Samples() {}

    /** The content tree that is packed into the program. */
    public static Library library() {
        Problems problems = new Problems();
        return LibraryReader.read(new ContentTree(Path.of("content"), "content"), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
    }

    /** The embedded library with other topics outside the routine: one in each subject a blueprint draws from. */
    public static Edition edition(Level level, int questionsInEach, Levels levels) {
        Library all = library();
        List<Topic> topics = new ArrayList<>();
        int code = 1;
        for (Subject subject : Subject.values()) {
            topics.add(topic(subject, code++, 1, questionsInEach, levels));
            topics.add(topic(subject, code++, 2, questionsInEach, levels));
        }
        Library made = new Library(topics, all.routine(), all.contest(), all.tables(), all.wording());
        return Edition.of(made, level, new Problems());
    }

    private static Topic topic(Subject subject, int code, int no, int questions, Levels levels) {
        String path = subject.folder() + "/sample-" + no + ".md";
        List<JudgeQuestion> asked = IntStream.rangeClosed(1, questions)
                .mapToObj(index -> question(path, index, levels))
                .toList();
        return new Topic(
                new Topic.Head(
                        path,
                        "Sample " + no,
                        Levels.ALL,
                        Optional.of(code).filter(stop -> stop <= 16),
                        code,
                        new Topic.Credits(new Place("content/" + path, 1), List.of(), Optional.empty())),
                List.of(),
                new Topic.Practice(List.of(), List.of(), asked, List.of()));
    }

    /** Every third asks for the member's own rabbit; points to name run from one to four, of which up to three are enough. */
    private static JudgeQuestion question(String path, int index, Levels levels) {
        int points = 1 + index % 4;
        return new JudgeQuestion(
                Words.of("What do you know about thing " + index + " of " + path + "?"),
                levels,
                new Place("content/" + path, 10 * index),
                index % 3 == 0 ? About.OWN_RABBIT : About.RABBITS,
                Math.min(points, 1 + index % 3),
                IntStream.rangeClosed(1, points)
                        .mapToObj(point -> Words.of("a true thing about it, number " + point))
                        .toList());
    }
}
