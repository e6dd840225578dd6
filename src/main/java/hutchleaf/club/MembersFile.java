package hutchleaf.club;

import hutchleaf.model.Club;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.Library;
import hutchleaf.model.Member;
import hutchleaf.model.Rabbit;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Reads {@code members.csv}: rows by line, then members with their rabbits. */
record MembersFile(Club club, DateForm dates, Library library, LocalDate today, Problems problems) {
    private static final List<Character> DELIMITERS = List.of(',', ';', '\t');

    /** The roster; empty, with an error, when the head is wrong or there are no rows. */
    Optional<Roster> read(Place at, String text) {
        char delimiter = delimiter(text);
        List<CsvRecords.Line> lines = CsvRecords.read(text, delimiter).stream()
                .filter(line -> line.fault().isPresent()
                        || line.cells().stream()
                                .anyMatch(cell -> !Cells.tidy(cell).isEmpty()))
                .toList();
        if (lines.isEmpty()) {
            problems.add(at, "the file has no rows", "write the names of the columns in the first line");
            return Optional.empty();
        }
        CsvRecords.Line head = lines.get(0);
        if (head.fault().isPresent()) {
            head.fault().ifPresent(fault -> problems.add(at.atLine(head.line()), fault.what(), fault.mend()));
            return Optional.empty();
        }
        Divisions divisions = divisions();
        return Header.read(head.cells(), at.atLine(head.line()), divisions.columns(), problems)
                .flatMap(header -> rows(at, header, lines.subList(1, lines.size()), divisions, delimiter != ','));
    }

    private Optional<Roster> rows(
            Place at, Header header, List<CsvRecords.Line> lines, Divisions divisions, boolean decimalComma) {
        if (lines.isEmpty()) {
            problems.add(at, "no members stand in the file", "write a row for each rabbit below the first line");
            return Optional.empty();
        }
        RowReader reader = new RowReader(club, dates, divisions, library, today, decimalComma);
        List<Row> rows = new ArrayList<>();
        List<Roster.Bad> bad = new ArrayList<>();
        for (CsvRecords.Line line : lines) {
            Cells cells = new Cells(header, line.cells(), at.atLine(line.line()), new Problems());
            form(line, cells);
            if (cells.problems().hasErrors()) {
                bad.add(new Roster.Bad(
                        cells.text(Column.MEMBER_NAME),
                        cells.at(),
                        cells.problems().sorted()));
            } else {
                rows.add(reader.read(cells));
            }
        }
        Doubles.check(rows);
        return Optional.of(roster(rows, bad));
    }

    private static void form(CsvRecords.Line line, Cells cells) {
        line.fault().ifPresent(fault -> cells.error(fault.what(), fault.mend()));
        int width = cells.header().width();
        if (line.cells().size() > width) {
            cells.error(
                    "the row has " + line.cells().size() + " cells, the first line " + width,
                    "put quotes round a cell that holds a separator");
        }
    }

    private Roster roster(List<Row> rows, List<Roster.Bad> faulty) {
        Set<String> left =
                faulty.stream().map(bad -> Row.key(bad.name())).collect(Collectors.toCollection(TreeSet::new));
        List<Roster.Bad> bad = new ArrayList<>(faulty);
        for (Row row : rows) {
            if (row.bad()) {
                left.add(row.memberKey());
                bad.add(new Roster.Bad(row.name(), row.at(), row.problems().sorted()));
            } else {
                problems.addAll(row.problems());
            }
        }
        bad.sort(Comparator.comparing(Roster.Bad::at));
        Map<String, List<Row>> byMember = rows.stream()
                .filter(row -> !left.contains(row.memberKey()))
                .collect(Collectors.groupingBy(Row::memberKey, LinkedHashMap::new, Collectors.toList()));
        return new Roster(club, byMember.values().stream().map(this::member).toList(), bad);
    }

    /** A member from all their rows; what the first leaves empty a later one may give. */
    private Member member(List<Row> rows) {
        Row first = rows.get(0);
        Member.Division division = first.person().division().orElseThrow();
        List<Rabbit> rabbits =
                rows.stream().flatMap(row -> row.rabbit().stream()).toList();
        return new Member(
                first.name(),
                first.person().counted().born(),
                rows.stream()
                        .flatMap(row -> row.person().counted().years().stream())
                        .findFirst(),
                division,
                rows.stream()
                        .flatMap(row -> row.person().study().stream())
                        .findFirst()
                        .orElse(division.level()),
                rows.stream()
                        .flatMap(row -> row.person().firstYear().stream())
                        .findFirst()
                        .orElse(false),
                divisions().lastYear(first.person().counted()),
                NeedsCells.of(rows.stream().map(row -> row.person().needs()).toList()),
                rabbits,
                first.at());
    }

    private Divisions divisions() {
        List<DivisionRule> rules = library.contest().divisions().stream()
                .filter(rule -> rule.ruleSet().equals(club.show().ruleSet()))
                .toList();
        return new Divisions(rules, club.show().countedOn(), club.show().date());
    }

    /** The separator with which the first line names most columns. */
    private static char delimiter(String text) {
        Comparator<Character> byKnown = Comparator.comparingLong(delimiter -> CsvRecords.read(text, delimiter).stream()
                .limit(1)
                .mapToLong(line -> Header.known(line.cells()))
                .sum());
        return DELIMITERS.stream().max(byKnown).orElseThrow();
    }
}
