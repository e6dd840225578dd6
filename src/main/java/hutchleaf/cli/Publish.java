package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.contest.QuestionSet;
import hutchleaf.contest.QuestionSets;
import hutchleaf.contest.ScoreCheck;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.Manuscript;
import hutchleaf.page.Publications;
import hutchleaf.page.Templates;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.Sides;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The main job from top to bottom: content tree, editions, pages, press, finished files. */
final class Publish {
    /** What was asked for; without a folder the embedded content or templates are used. */
    record Request(Path out, Paper paper, Optional<Path> content, Optional<Path> templates) {}

    private static final String LANGUAGE = "en";
    private static final String PDF = ".pdf";
    private static final String CLUB = "Quarry Bend Small Stock Club";

    /** Sets of questions for a division, so that two classes and a call-back need not share one. */
    private static final int SETS = 3;

    /** Fixed, so that a judge's list printed again is the same list. */
    private static final long SEED = 20_260_808;

    private final Request request;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Problems problems = new Problems();
    private final Map<String, Printed> files = new LinkedHashMap<>();
    private final Table table = new Table();

    Publish(Request request, PrintWriter out, PrintWriter err) {
        this.request = request;
        this.out = out;
        this.err = err;
    }

    int run() {
        ContentTree tree = request.content()
                .map(folder -> new ContentTree(folder, folder.getFileName().toString()))
                .orElseGet(Embedded::content);
        Optional<Library> library = LibraryReader.read(tree, problems);
        library.ifPresent(found -> print(found, tree));
        problems.sorted().forEach(err::println);
        if (problems.hasErrors()) {
            err.println("Nothing was written.");
            return Exit.CONTENT_TO_MEND;
        }
        new Outputs(request.out()).replace(files);
        table.print(out);
        return Exit.DONE;
    }

    private void print(Library library, ContentTree tree) {
        ScoreCheck.check(library.contest().scoreSheets(), problems);
        Publications publications = new Publications(
                request.templates().map(Templates::folder).orElseGet(Templates::embedded), request.paper(), LANGUAGE);
        Press press = new Press(tree::bytes);
        for (Level level : Level.values()) {
            Edition edition = Edition.of(library, level, problems);
            if (!problems.hasErrors()) {
                membersPaper(edition, publications, press);
                judgesPaper(edition, publications, press);
            }
        }
    }

    private void membersPaper(Edition edition, Publications publications, Press press) {
        String whom = "members, " + edition.level().word();
        String guide = guide(edition);
        add(guide, whom, publications.guide(edition, CLUB, problems), press, Sides.TWO);
        add("cards/flashcards-" + edition.level().word(), whom, publications.deck(edition, problems), press, Sides.ONE);
    }

    /** Score sheet, grid and questions; primary gets no points, so its sheet only says what went well. */
    private void judgesPaper(Edition edition, Publications publications, Press press) {
        String word = edition.level().word();
        String whom = "judge, " + word;
        int count = edition.level() == Level.PRIMARY ? 1 : SETS;
        List<QuestionSet> sets = QuestionSets.draw(edition, count, SEED, problems);
        Map<String, Integer> guidePages = Optional.ofNullable(files.get(guide(edition) + PDF))
                .map(Printed::pageOf)
                .orElse(Map.of());
        add(
                "scoresheets/questions-" + word,
                whom,
                publications.questions(edition, sets, guidePages, problems),
                press,
                Sides.ONE);
        if (edition.level() == Level.PRIMARY) {
            add(
                    "scoresheets/what-went-well-" + word,
                    whom,
                    publications.wentWell(edition, CLUB, problems),
                    press,
                    Sides.ONE);
        } else {
            add(
                    "scoresheets/score-sheet-" + word,
                    whom,
                    publications.scoreSheet(edition, "", problems),
                    press,
                    Sides.ONE);
            add("scoresheets/score-grid-" + word, whom, publications.scoreGrid(edition, problems), press, Sides.ONE);
        }
    }

    private static String guide(Edition edition) {
        return "guides/study-guide-" + edition.level().word();
    }

    private void add(String name, String whom, Optional<Manuscript> manuscript, Press press, Sides sides) {
        manuscript.flatMap(pages -> press.print(pages, problems)).ifPresent(pdf -> {
            files.put(name + PDF, pdf);
            table.add(name + PDF, pdf.pages(), sides.sheets(pdf.pages()), whom);
        });
    }
}
