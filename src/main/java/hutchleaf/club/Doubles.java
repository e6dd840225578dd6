package hutchleaf.club;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Checks what no single row can know: names, rabbits and ear numbers that stand twice. The later row is the bad one. */
final class Doubles {
    private final Map<String, Row> members = new HashMap<>();
    private final Map<String, Row> ears = new HashMap<>();
    private final Map<String, Row> earsInAnyCase = new HashMap<>();
    private final Map<String, Row> rabbits = new HashMap<>();

    static void check(List<Row> rows) {
        Doubles doubles = new Doubles();
        rows.forEach(doubles::check);
    }

    private void check(Row row) {
        if (!row.name().isEmpty()) {
            Row first = members.putIfAbsent(row.memberKey(), row);
            if (first != null) {
                sameName(first, row);
            }
        }
        if (!row.ear().isEmpty()) {
            ear(row);
        }
    }

    private void sameName(Row first, Row row) {
        Divisions.Counted one = first.person().counted();
        Divisions.Counted other = row.person().counted();
        String line = "line " + first.at().line();
        if (differ(one.born(), other.born()) || differ(one.grade(), other.grade())) {
            row.problems()
                    .add(
                            row.at(),
                            "'" + row.name() + "' has another birth date or grade in " + line,
                            "if they are two people, add an initial to both names; if not, mend one row");
            return;
        }
        told("years_in_club", one.years(), other.years(), line, row);
        told("first_year_with_rabbits", first.person().firstYear(), row.person().firstYear(), line, row);
        told("study_level", first.person().study(), row.person().study(), line, row);
        told("setting", first.person().needs().setting(), row.person().needs().setting(), line, row);
        told(
                "accommodation",
                first.person().needs().help(),
                row.person().needs().help(),
                line,
                row);
    }

    private static void told(String column, Optional<?> one, Optional<?> other, String line, Row row) {
        if (differ(one, other)) {
            row.problems()
                    .add(
                            row.at(),
                            "'" + column + "' of '" + row.name() + "' differs from " + line,
                            "write the same in both rows");
        }
    }

    /** Whether both are known and are not the same. */
    private static boolean differ(Optional<?> one, Optional<?> other) {
        return one.isPresent() && other.isPresent() && !one.equals(other);
    }

    private void ear(Row row) {
        Row rabbit = rabbits.putIfAbsent(row.memberKey() + "\n" + Row.key(row.rabbitName()) + "\n" + row.ear(), row);
        if (rabbit != null) {
            row.problems()
                    .add(
                            row.at(),
                            "this row says the same rabbit of the same member as line "
                                    + rabbit.at().line(),
                            "take one of the two rows out");
            return;
        }
        Row same = ears.putIfAbsent(row.ear(), row);
        Row alike = earsInAnyCase.putIfAbsent(row.ear().toLowerCase(Locale.ROOT), row);
        if (same != null) {
            row.problems()
                    .add(
                            row.at(),
                            "the ear number '" + row.ear() + "' stands in line "
                                    + same.at().line() + " too",
                            "look into the ears: no two rabbits have the same");
        } else if (alike != null) {
            row.problems()
                    .warn(
                            row.at(),
                            "the ear number '" + row.ear() + "' differs from '" + alike.ear() + "' in line "
                                    + alike.at().line() + " only in small and large letters",
                            "look into the ears again");
        }
    }
}
