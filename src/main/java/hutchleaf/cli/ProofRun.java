package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.contest.ScoreCheck;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.Publications;
import hutchleaf.page.Templates;
import hutchleaf.problem.Problems;
import hutchleaf.proof.Coverage;
import hutchleaf.proof.Findings;
import hutchleaf.proof.Proof;
import hutchleaf.proof.Report;
import hutchleaf.proof.Rule;
import hutchleaf.proof.Spelling;
import hutchleaf.proof.WordList;
import hutchleaf.sheet.Paper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The proofreader from top to bottom: content tree, editions, what their pages cannot hold, the rules, the report. */
final class ProofRun {
    /** What was asked for; without a folder the embedded content or templates are read. */
    record Request(
            Optional<Path> content,
            Optional<Path> templates,
            Lists lists,
            Spelling spelling,
            PageChecks.InkMeasured ink) {}

    /** Lists of familiar words; without one its score is left out. */
    record Lists(Optional<Path> spache, Optional<Path> daleChall) {
        static final Lists NONE = new Lists(Optional.empty(), Optional.empty());
    }

    /** One way to show a report. */
    interface Form {
        void print(Report report, PrintWriter out);
    }

    private final Request request;
    private final Form form;

    ProofRun(Request request, Form form) {
        this.request = request;
        this.form = form;
    }

    int run(PrintWriter out) {
        Report report = read();
        form.print(report, out);
        return report.hasErrors() ? Exit.CONTENT_TO_MEND : Exit.DONE;
    }

    private Report read() {
        Findings findings = new Findings();
        ContentTree tree = Embedded.contentOr(request.content());
        Problems problems = new Problems();
        Optional<Library> library = LibraryReader.read(tree, problems);
        library.ifPresent(found -> ScoreCheck.check(found.contest().scoreSheets(), problems));
        findings.take(Rule.TREE, problems);
        if (library.isEmpty()) {
            return new Report(findings.sorted(), new Coverage(List.of(), List.of()), List.of());
        }
        List<Edition> editions = editions(library.get());
        PageChecks pages = new PageChecks(
                library.get(),
                editions,
                new Publications(
                        request.templates().map(Templates::folder).orElseGet(Templates::embedded), Paper.LETTER, "en"),
                tree::bytes);
        Proof.Settings settings = new Proof.Settings(
                request.spelling(),
                request.lists().spache().map(WordList::read),
                request.lists().daleChall().map(WordList::read));
        Report report = Proof.read(library.get(), editions, settings, findings);
        pages.check(request.ink()).forEach(findings::take);
        return new Report(findings.sorted(), report.coverage(), report.readings());
    }

    /** What an edition lacks is found again, with its mend, by the rules of coverage. */
    private static List<Edition> editions(Library library) {
        List<Edition> editions = new ArrayList<>();
        Arrays.stream(Level.values()).forEach(level -> editions.add(Edition.of(library, level, new Problems())));
        return editions;
    }
}
