package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
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
import java.util.Map;
import java.util.Optional;

/** The main job from top to bottom: content tree, editions, pages, press, finished files. */
final class Publish {
    /** What was asked for; without a folder the embedded content or templates are used. */
    record Request(Path out, Paper paper, Optional<Path> content, Optional<Path> templates) {}

    private static final String LANGUAGE = "en";

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
        Publications publications = new Publications(
                request.templates().map(Templates::folder).orElseGet(Templates::embedded), request.paper(), LANGUAGE);
        Press press = new Press(tree::bytes);
        for (Level level : Level.values()) {
            Edition edition = Edition.of(library, level, problems);
            if (!problems.hasErrors()) {
                add(
                        "guides/study-guide-" + level.word(),
                        "members, " + level.word(),
                        publications.guide(edition, club(), problems),
                        press,
                        Sides.TWO);
                add(
                        "cards/flashcards-" + level.word(),
                        "members, " + level.word(),
                        publications.deck(edition, problems),
                        press,
                        Sides.ONE);
            }
        }
    }

    private static String club() {
        return "Quarry Bend Small Stock Club";
    }

    private Optional<Printed> add(String name, String whom, Optional<Manuscript> manuscript, Press press, Sides sides) {
        Optional<Printed> printed = manuscript.flatMap(pages -> press.print(pages, problems));
        printed.ifPresent(pdf -> {
            files.put(name + ".pdf", pdf);
            table.add(name + ".pdf", pdf.pages(), sides.sheets(pdf.pages()), whom);
        });
        return printed;
    }
}
