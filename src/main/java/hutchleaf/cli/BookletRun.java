package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.edition.Edition;
import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.Publications;
import hutchleaf.page.Spelled;
import hutchleaf.page.Templates;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Booklet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lean guides from top to bottom: content tree, editions, half-sheet pages, sheets to fold. */
final class BookletRun {
    /** What was asked for; without a folder the embedded content or templates are used. */
    record Request(
            List<Level> levels,
            Club.Spelling spelling,
            Path out,
            BookletSheets sheets,
            Optional<Path> content,
            Optional<Path> templates,
            Outputs.Pictures pictures) {}

    /** One lean guide. */
    private record Made(Level level, Printed pages, Booklet booklet, Printed sheets) {}

    private final Request request;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Problems problems = new Problems();

    BookletRun(Request request, PrintWriter out, PrintWriter err) {
        this.request = request;
        this.out = out;
        this.err = err;
    }

    int run() {
        ContentTree tree = Embedded.contentOr(request.content());
        Optional<Library> library = LibraryReader.read(tree, problems);
        List<Made> made = new ArrayList<>();
        if (library.isPresent() && !problems.hasErrors()) {
            Press press = new Press(tree::bytes);
            for (Level level : request.levels()) {
                print(library.get(), level, press).ifPresent(made::add);
            }
        }
        problems.sorted().forEach(err::println);
        if (problems.hasErrors()) {
            err.println("Nothing was written.");
            return Exit.CONTENT_TO_MEND;
        }
        write(made);
        return Exit.DONE;
    }

    private Optional<Made> print(Library library, Level level, Press press) {
        Problems own = new Problems();
        Edition edition = Edition.of(library, level, own);
        Publications publications = new Publications(
                request.templates().map(Templates::folder).orElseGet(Templates::embedded),
                request.sheets().paper(),
                Spelled.of(library.wording(), request.spelling()));
        Optional<Made> made = own.hasErrors()
                ? Optional.empty()
                : publications
                        .leanGuideDraft(edition, "", own)
                        .flatMap(draft -> press.print(draft, own))
                        .flatMap(draft -> publications.leanGuide(edition, "", draft.pageOf(), own))
                        .flatMap(guide -> press.print(guide, own))
                        .map(pages ->
                                impose(level, pages, publications.spelled().language()));
        problems.addAll(own);
        return made;
    }

    private Made impose(Level level, Printed pages, String language) {
        BookletSheets sheets = request.sheets();
        String title = level.title() + " lean guide: sheets to print, fold and staple";
        return new Made(level, pages, sheets.booklet(pages), sheets.of(title, language, pages));
    }

    private void write(List<Made> all) {
        Table table = new Table();
        try (Outputs outputs = new Outputs(request.out(), "booklet", request.pictures())) {
            for (Made made : all) {
                String name = "booklets/lean-guide-" + made.level().word();
                outputs.add(name + ".pdf", made.pages());
                outputs.add(name + "-sheets.pdf", made.sheets());
                String members = "members, " + made.level().word();
                table.add(name + ".pdf", made.pages().pages(), 0, members + ", on a screen");
                table.add(
                        name + "-sheets.pdf",
                        made.sheets().pages(),
                        made.booklet().sheets(),
                        members + ", to fold");
            }
            outputs.commit();
        }
        table.print(out);
        out.println();
        howToFold().forEach(out::println);
    }

    private List<String> howToFold() {
        return switch (request.sheets().binding()) {
            case NESTED ->
                List.of(
                        "How to fold: print each ...-sheets.pdf on both sides at its true size (100 %), turned over the short edge.",
                        "Lay the sheets down as they come, the first at the bottom with its cover underneath.",
                        "Fold all of them once in the middle, cover outside, and staple twice through the fold.");
            case STACKED ->
                List.of(
                        "How to fold: print each ...-sheets.pdf on one side at its true size (100 %).",
                        "Fold each sheet by itself in the middle, the print outside.",
                        "Lay them in order, page 1 on top, all folds at the right.",
                        "Staple three times along the left, 5 mm from the edge.");
        };
    }
}
