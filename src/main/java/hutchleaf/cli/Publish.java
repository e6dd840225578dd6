package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.contest.ScoreCheck;
import hutchleaf.edition.LeaveOut;
import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Setting;
import hutchleaf.page.Publications;
import hutchleaf.page.Spelled;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;

/** The main job from top to bottom: content tree, editions, pages, press, finished files. */
final class Publish {
    /** What was asked for; without a folder the embedded content or templates are used. */
    record Request(
            Path out,
            Paper paper,
            Club.Spelling spelling,
            Set<Setting> settings,
            boolean accommodation,
            Optional<Path> content,
            Optional<Path> templates,
            Set<String> leaveOut,
            Outputs.Pictures pictures,
            Club.Saver saver) {}

    private final Request request;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Problems problems = new Problems();

    Publish(Request request, PrintWriter out, PrintWriter err) {
        this.request = request;
        this.out = out;
        this.err = err;
    }

    int run() {
        ContentTree tree = Embedded.contentOr(request.content());
        Optional<Library> library = LibraryReader.read(tree, problems).map(this::wanted);
        library.ifPresent(found -> ScoreCheck.check(found.contest().scoreSheets(), problems));
        List<LevelRun> runs = library.filter(found -> !problems.hasErrors())
                .map(found -> print(found, tree))
                .orElse(List.of());
        runs.forEach(run -> problems.addAll(run.problems()));
        problems.sorted().forEach(err::println);
        if (problems.hasErrors()) {
            err.println("Nothing was written.");
            return Exit.CONTENT_TO_MEND;
        }
        write(runs);
        return Exit.DONE;
    }

    /** Without the figures that are to be left out; a name that is no figure is an error. */
    private Library wanted(Library library) {
        Set<String> known = library.tables().drawings().keySet();
        request.leaveOut().stream()
                .filter(figure -> !known.contains(figure))
                .forEach(figure -> problems.add(
                        Place.whole("--leave-out " + figure), "there is no such figure", NearMiss.mend(figure, known)));
        return LeaveOut.figures(library, request.leaveOut());
    }

    private void write(List<LevelRun> runs) {
        Table table = new Table();
        try (Outputs outputs = new Outputs(request.out(), "publish", request.pictures())) {
            for (LevelRun run : runs) {
                for (LevelRun.Made made : run.made()) {
                    outputs.add(made.file(), made.printed());
                    table.add(made.file(), made.printed().pages(), made.sheets(), made.whom());
                }
            }
            outputs.commit();
        }
        table.print(out);
    }

    /** Prints every level, the longest first, and gives them back youngest first. */
    private List<LevelRun> print(Library library, ContentTree tree) {
        Publications publications = new Publications(
                SaverOption.templates(request.templates(), request.saver(), Club.Saver.NO),
                request.paper(),
                Spelled.of(library.wording(), request.spelling()));
        List<Callable<LevelRun>> jobs = Arrays.stream(Level.values())
                .sorted(Comparator.reverseOrder())
                .<Callable<LevelRun>>map(level -> () -> new LevelRun(
                                level, publications, request.settings(), request.accommodation(), tree::bytes)
                        .run(library))
                .toList();
        List<LevelRun> runs = new ArrayList<>(SideBySide.run(jobs));
        Collections.reverse(runs);
        return runs;
    }
}
