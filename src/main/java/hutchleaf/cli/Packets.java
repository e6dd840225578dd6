package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.contest.ScoreCheck;
import hutchleaf.edition.Edition;
import hutchleaf.edition.LeaveOut;
import hutchleaf.edition.Packet;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Member;
import hutchleaf.page.Publications;
import hutchleaf.page.Spelled;
import hutchleaf.press.Press;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.Stock;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code packets} from top to bottom: club and content, a packet for each member, the print plan, finished files. */
final class Packets {
    static final String LEFT_OUT = "The rows named above were left out; all others are printed.";

    private final PacketOptions options;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Problems problems = new Problems();

    Packets(PacketOptions options, PrintWriter out, PrintWriter err) {
        this.options = options;
        this.out = out;
        this.err = err;
    }

    int run() {
        ContentTree tree = Embedded.contentOr(options.club().content());
        Optional<Library> library = LibraryReader.read(tree, problems);
        library.ifPresent(found -> ScoreCheck.check(found.contest().scoreSheets(), problems));
        LocalDate now = LocalDate.now(ZoneId.systemDefault());
        Optional<PacketRoster> roster = library.filter(found -> !problems.hasErrors())
                .flatMap(found -> PacketRoster.read(
                        options.club(), options.only(), now, found, new Press(tree::bytes, options.font()), problems));
        roster.ifPresent(found -> found.rows().sorted().forEach(err::println));
        if (roster.isEmpty()
                || problems.hasErrors()
                || (roster.get().rows().hasErrors() && !options.club().skipBad())
                || roster.get().asked().isEmpty()) {
            return refused();
        }
        return print(roster.get(), library.get(), tree);
    }

    private int print(PacketRoster roster, Library whole, ContentTree tree) {
        Library library = LeaveOut.figures(whole, roster.club().show().leaveOut());
        Map<Level, Edition> editions = new EnumMap<>(Level.class);
        for (Level level : Level.values()) {
            editions.put(level, Edition.of(library, level, problems));
        }
        Paper paper = options.club().paper().orElse(roster.club().print().paper());
        Publications publications = new Publications(
                SaverOption.templates(
                        options.club().templates(),
                        options.club().saver(),
                        roster.club().print().saver()),
                paper,
                Spelled.of(
                        library.wording(),
                        options.spelling().orElse(roster.club().print().spelling())));
        KeptWords kept = new KeptWords(publications.spelled());
        Contestants numbers = Contestants.of(options.club().out(), roster.members());
        List<PacketPrinter.Job> jobs = jobs(roster, editions, numbers, kept);
        if (problems.hasErrors()) {
            return refused();
        }
        SharedParts shared = new SharedParts();
        PrinterSetting corrections = PrinterSetting.of(roster.club().print().printer());
        Optional<BookletSheets> booklet = options.booklet()
                .map(folded -> new BookletSheets(
                        paper,
                        folded.weight().orElseGet(() -> Stock.PLAIN.grammage(paper)),
                        folded.binding(),
                        corrections));
        PagesChanged changed = PagesChanged.since(options.club().out(), Publications.version(roster.today()));
        try (Outputs outputs =
                new Outputs(options.club().out(), "packets", options.club().pictures())) {
            PacketPrinter printer = new PacketPrinter(
                    () -> new PacketPress(
                            publications,
                            new Press(tree::bytes, options.font()),
                            shared,
                            editions,
                            booklet,
                            corrections),
                    changed,
                    outputs,
                    problems);
            List<PacketPrinter.Made> made = printer.print(jobs, new Progress(jobs.size(), err)::done);
            if (options.only().isEmpty()) {
                new PlanFile(roster, numbers, publications, new Press(tree::bytes, options.font()), problems)
                        .write(made, outputs);
            }
            if (problems.hasErrors()) {
                return refused();
            }
            changed.list(outputs);
            outputs.keep(Contestants.FILE, numbers.csv());
            if (options.only().isEmpty()) {
                outputs.commit();
            } else {
                outputs.commitBeside();
            }
            changed.keep(options.club().out());
            return finished(made, changed, roster);
        }
    }

    private List<PacketPrinter.Job> jobs(
            PacketRoster roster, Map<Level, Edition> editions, Contestants numbers, KeptWords kept) {
        PacketList list = new PacketList(
                kept.club(roster.club()),
                editions,
                roster.today(),
                options.club().setting(),
                problems);
        PacketNames names = new PacketNames();
        List<PacketPrinter.Job> jobs = new ArrayList<>();
        for (Member member : numbers.inOrderOfShowing(roster.members())) {
            String folder = names.of(member, numbers.number(member));
            if (roster.asked().contains(member)) {
                list.of(kept.member(member), numbers.number(member)).ifPresent(packet -> jobs.add(job(packet, folder)));
            }
        }
        if (options.only().isEmpty()) {
            for (Packet packet : list.byHand(roster.members())) {
                jobs.add(job(
                        packet, "packets/any-rabbit-" + packet.edition().level().word() + "/"));
            }
        }
        return jobs;
    }

    private PacketPrinter.Job job(Packet packet, String folder) {
        return new PacketPrinter.Job(packet, folder, ChosenCards.of(packet, options.cards()), options.withGuide());
    }

    private int refused() {
        problems.sorted().forEach(err::println);
        err.println("Nothing was written.");
        return Exit.CONTENT_TO_MEND;
    }

    private int finished(List<PacketPrinter.Made> made, PagesChanged changed, PacketRoster roster) {
        problems.sorted().forEach(err::println);
        Table table = new Table();
        made.forEach(packet -> table.add(
                packet.job().folder(),
                packet.pages().values().stream().mapToInt(Integer::intValue).sum(),
                packet.sheets(),
                packet.whom()));
        table.print(out);
        if (changed.files() > 0) {
            out.println("Printed before and changed since: " + changed.files() + " files. " + PagesChanged.LIST + " in "
                    + options.club().out() + " tells what to print again.");
        }
        if (roster.rows().hasErrors()) {
            err.println(LEFT_OUT);
            return Exit.CONTENT_TO_MEND;
        }
        return Exit.DONE;
    }
}
