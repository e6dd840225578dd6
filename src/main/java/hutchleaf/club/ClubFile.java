package hutchleaf.club;

import hutchleaf.content.FrontMatter;
import hutchleaf.content.MarkdownFile;
import hutchleaf.model.Club;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.Library;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * {@code club.md}, read: the club, and the form in which its dates are written.
 *
 * <p>Needed are {@code name}, {@code show-date} and {@code rule-set}. Where the others are missing: the show is "the
 * show", ages are counted as {@link CutOff} reads the rule set, study starts today and knows no rest day, 15 minutes a day,
 * on Letter, in British spelling, with weights in pounds, for a printer that needs no correction, and a sheet has the price 0, which means that none was
 * given.
 */
record ClubFile(Club club, DateForm dates) {
    static final List<String> KEYS = List.of(
            "name",
            "show-name",
            "show-date",
            "cut-off",
            "rule-set",
            "paper",
            "date-form",
            "start-date",
            "rest-days",
            "minutes-a-day",
            "price-plain",
            "price-card",
            "spelling",
            "weights",
            "saver",
            "leave-out",
            "grip",
            "printer");

    private static final int MOST_YEARS_APART = 2;

    /** @param text in any line ends */
    static Optional<ClubFile> read(Place at, String text, Library library, Problems problems) {
        Problems own = new Problems();
        String lines = text.replace("\r\n", "\n").replace('\r', '\n');
        MarkdownFile file = MarkdownFile.read(at, "club.md", Letter.withoutHeadings(at, lines, own), own);
        file.front().allowOnly(KEYS, own);
        file.lead().forEach(block -> Letter.check(block, library, own));
        Keys keys = new Keys(file.front(), own);
        String name = file.front().require("name", own);
        Optional<Club.Show> show = show(keys, library, own);
        Club.Practice practice = practice(keys, show.map(Club.Show::date), own);
        Club.Print print = new Club.Print(
                keys.paper(),
                keys.price("price-plain"),
                keys.price("price-card"),
                keys.spelling(),
                keys.weights(),
                keys.printer(at),
                keys.saver());
        problems.addAll(own);
        return show.filter(read -> !own.hasErrors())
                .map(read -> new ClubFile(new Club(name, read, practice, print, file.lead(), at), keys.dates()));
    }

    private static Optional<Club.Show> show(Keys keys, Library library, Problems problems) {
        Optional<LocalDate> date = keys.neededDate("show-date");
        Optional<DivisionRule> rule = ruleSet(keys.front(), library, problems);
        Optional<LocalDate> counted = keys.front().field("cut-off").isPresent()
                ? keys.date("cut-off")
                : date.flatMap(day -> rule.flatMap(row -> CutOff.of(
                        row.terms().countedOn(),
                        day,
                        keys.front().field("rule-set").orElseThrow().at(),
                        problems)));
        date.ifPresent(day -> counted.filter(other -> Math.abs(Divisions.years(other, day)) >= MOST_YEARS_APART)
                .ifPresent(other -> keys.report(
                        "cut-off",
                        "'cut-off' is " + DateForm.printed(other) + ", two years or more from the show",
                        "look at the year")));
        Set<String> leaveOut = keys.leaveOut(library.tables().drawings().keySet());
        String name = keys.text("show-name").orElse("the show");
        return date.flatMap(day ->
                counted.flatMap(other -> rule.map(row -> new Club.Show(name, day, row.ruleSet(), other, leaveOut))));
    }

    private static Optional<DivisionRule> ruleSet(FrontMatter front, Library library, Problems problems) {
        String name = front.require("rule-set", problems);
        List<DivisionRule> rules = library.contest().divisions();
        Optional<DivisionRule> rule =
                rules.stream().filter(row -> row.ruleSet().equals(name)).findFirst();
        if (rule.isEmpty()) {
            List<String> known =
                    rules.stream().map(DivisionRule::ruleSet).distinct().toList();
            front.field("rule-set")
                    .ifPresent(field ->
                            problems.add(field.at(), "unknown rule set '" + name + "'", NearMiss.mend(name, known)));
        }
        return rule;
    }

    private static Club.Practice practice(Keys keys, Optional<LocalDate> show, Problems problems) {
        Optional<LocalDate> start = keys.date("start-date");
        show.ifPresent(day -> start.filter(first -> !first.isBefore(day))
                .ifPresent(first -> keys.report(
                        "start-date",
                        "'start-date' is " + DateForm.printed(first) + ", not before the show",
                        "study starts before " + DateForm.printed(day))));
        String grip = keys.front()
                .field("grip")
                .flatMap(field -> Grip.read(field, problems))
                .orElse("");
        return new Club.Practice(start, keys.restDays(), keys.minutes(), grip);
    }
}
