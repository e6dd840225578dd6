package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.contest.QuestionSet;
import hutchleaf.contest.QuestionSets;
import hutchleaf.contest.ScoreCheck;
import hutchleaf.edition.Edition;
import hutchleaf.edition.LeaveOut;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.JudgePapers;
import hutchleaf.page.JudgedClass;
import hutchleaf.page.Publications;
import hutchleaf.page.Spelled;
import hutchleaf.press.Merge;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Sides;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code scoresheets} from top to bottom: club and content, a bound file for each judge and division. */
final class ScoreSheets {
    private final ScoreSheetsOptions options;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Problems problems = new Problems();
    private final SharedParts shared = new SharedParts();
    private final Map<Level, List<QuestionSet>> sets = new EnumMap<>(Level.class);

    ScoreSheets(ScoreSheetsOptions options, PrintWriter out, PrintWriter err) {
        this.options = options;
        this.out = out;
        this.err = err;
    }

    int run() {
        ContentTree tree = Embedded.contentOr(options.club().content());
        Press press = new Press(tree::bytes);
        Optional<Library> library = LibraryReader.read(tree, problems);
        library.ifPresent(found -> ScoreCheck.check(found.contest().scoreSheets(), problems));
        options.wanted()
                .title()
                .ifPresent(title -> press.checkGlyphs(title, Place.whole("--title " + title), problems));
        LocalDate now = LocalDate.now(ZoneId.systemDefault());
        Optional<PacketRoster> roster = library.filter(found -> !problems.hasErrors())
                .flatMap(found -> PacketRoster.read(options.club(), Optional.empty(), now, found, press, problems));
        roster.ifPresent(found -> rows(found).forEach(err::println));
        if (roster.isEmpty()
                || problems.hasErrors()
                || (leavesOut(roster.get()) && !options.club().skipBad())) {
            return refused();
        }
        return print(roster.get(), library.get(), press);
    }

    /** What is wrong in rows; blank sheets need none of them. */
    private List<Problem> rows(PacketRoster roster) {
        return options.wanted().blank() ? List.of() : roster.rows().sorted();
    }

    private boolean leavesOut(PacketRoster roster) {
        return roster.rows().hasErrors() && !options.wanted().blank();
    }

    private int print(PacketRoster roster, Library whole, Press press) {
        Library library = LeaveOut.figures(whole, roster.club().show().leaveOut());
        Publications publications = new Publications(
                        SaverOption.templates(
                                options.club().templates(),
                                options.club().saver(),
                                roster.club().print().saver()),
                        options.club().paper().orElse(roster.club().print().paper()),
                        Spelled.of(library.wording(), roster.club().print().spelling()))
                .in(options.club().setting());
        Contestants numbers = Contestants.of(options.club().out(), roster.members());
        List<JudgedClass> classes =
                JudgedClasses.of(roster, numbers, options.wanted(), library, publications.spelled(), problems);
        Table table = new Table();
        try (Outputs outputs =
                new Outputs(options.club().out(), "scoresheets", options.club().pictures())) {
            for (JudgedClass shown : classes) {
                Edition edition = Edition.of(library, shown.level(), problems);
                JudgePapers papers = publications.judge(edition, shown, sets(edition));
                bound(papers, publications.spelled().language(), press).ifPresent(pdf -> {
                    outputs.add(file(shown, classes), pdf);
                    table.add(file(shown, classes), pdf.pages(), Sides.ONE.sheets(pdf.pages()), whom(shown));
                });
            }
            if (problems.hasErrors() || classes.isEmpty()) {
                return refused();
            }
            if (!options.wanted().blank()) {
                outputs.keep(Contestants.FILE, numbers.csv());
            }
            if (options.wanted().division().isPresent()) {
                outputs.commitBeside();
            } else {
                outputs.commit();
            }
        }
        problems.sorted().forEach(err::println);
        table.print(out);
        if (leavesOut(roster)) {
            err.println(Packets.LEFT_OUT);
            return Exit.CONTENT_TO_MEND;
        }
        return Exit.DONE;
    }

    private List<QuestionSet> sets(Edition edition) {
        return sets.computeIfAbsent(
                edition.level(), level -> QuestionSets.draw(edition, LevelRun.sets(level), LevelRun.SEED, problems));
    }

    /** Two judges' questions are the same pages: what has the same words is printed once. */
    private Optional<Printed> bound(JudgePapers papers, String language, Press press) {
        List<Printed> parts = new ArrayList<>();
        papers.parts(problems)
                .forEach(part ->
                        shared.get(part, () -> press.print(part, problems)).ifPresent(parts::add));
        return problems.hasErrors() ? Optional.empty() : Optional.of(Merge.of(papers.title(), language, parts));
    }

    /** Named by the level; by the division too where two share one. */
    private static String file(JudgedClass shown, List<JudgedClass> all) {
        boolean alone = all.stream()
                .filter(other -> other.level() == shown.level())
                .allMatch(other -> other.division().equals(shown.division()));
        return "judge/judge-" + shown.judging().judge() + "-" + shown.level().word()
                + (alone ? "" : "-" + PacketNames.letters(shown.division())) + ".pdf";
    }

    private static String whom(JudgedClass shown) {
        return "judge " + shown.judging().judge() + ", " + shown.level().word();
    }

    private int refused() {
        problems.sorted().forEach(err::println);
        err.println("Nothing was written.");
        return Exit.CONTENT_TO_MEND;
    }
}
