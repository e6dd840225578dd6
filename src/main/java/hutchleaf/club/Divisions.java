package hutchleaf.club;

import hutchleaf.model.DivisionRule;
import hutchleaf.model.DivisionRule.By;
import hutchleaf.model.Level;
import hutchleaf.model.Member.Division;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds the division of a member under one rule set. Where a rule set has bands of several kinds, a grade decides first,
 * then years in a club, then age.
 *
 * <p>Ages are whole years by {@link ChronoUnit#YEARS}: someone born on 29 February turns older on 1 March of a common
 * year. Laws differ on that day; none of the cut-offs in use lies on it.
 *
 * @param rules the rows of the rule set, at least one
 * @param countedOn the day on which ages and grades are counted
 */
record Divisions(List<DivisionRule> rules, LocalDate countedOn, LocalDate show) {
    /** What is known of a member. */
    record Counted(Optional<LocalDate> born, Optional<Integer> grade, Optional<Integer> years) {}

    private static final List<By> ORDER = List.of(By.GRADE, By.EXPERIENCE, By.AGE);

    Divisions {
        rules = List.copyOf(rules);
    }

    /** The columns that a roster needs: those of the grades and years; birth dates where ages alone count. */
    Set<Column> columns() {
        Set<By> kinds = kinds();
        if (kinds.size() > 1) {
            kinds.remove(By.AGE);
        }
        return kinds.stream().map(Divisions::column).collect(Collectors.toUnmodifiableSet());
    }

    /** The division; an error when the member is outside all of them, or too little is known. */
    Optional<Division> of(Counted member, Place at, Problems problems) {
        for (By by : ORDER) {
            for (DivisionRule rule : rules) {
                if (rule.by() == by && holds(rule, member)) {
                    return Optional.of(new Division(
                            rule.division(),
                            rule.level(),
                            said(by, member),
                            rule.terms().competes(),
                            member.born().map(born -> years(born, show))));
                }
            }
        }
        List<By> known = ORDER.stream()
                .filter(by -> kinds().contains(by) && value(by, member).isPresent())
                .toList();
        String lacking = ORDER.stream()
                .filter(by -> kinds().contains(by) && !known.contains(by))
                .map(by -> "'" + column(by).word() + "'")
                .collect(Collectors.joining(" or "));
        if (known.isEmpty()) {
            problems.add(at, "no " + lacking + " in this row", "fill the cell");
        } else {
            problems.add(
                    at,
                    known.stream().map(by -> said(by, member)).collect(Collectors.joining(", "))
                            + ": outside every division of '" + rules.get(0).ruleSet() + "' (" + bands() + ")",
                    lacking.isEmpty()
                            ? "look at the row, and at rule-set and cut-off in club.md"
                            : "fill in " + lacking + " too, or look at rule-set in club.md");
        }
        return Optional.empty();
    }

    /** The level of the division that a member was in a year before, by the same rules; empty where they were in none. */
    Optional<Level> lastYear(Counted member) {
        if (member.years().filter(years -> years <= 1).isPresent()) {
            return Optional.empty();
        }
        Counted before = new Counted(
                member.born().map(born -> born.plusYears(1)),
                member.grade().map(grade -> grade - 1),
                member.years().map(years -> years - 1));
        return of(before, Place.whole("a year before"), new Problems()).map(Division::level);
    }

    /** Whole years from one day to another; less than 0 for one who is born later. */
    static int years(LocalDate born, LocalDate day) {
        return (int) ChronoUnit.YEARS.between(born, day);
    }

    /** {@code 1 year old}, {@code 8 years old}. */
    static String old(int years) {
        return years + (years == 1 ? " year old" : " years old");
    }

    private Set<By> kinds() {
        return rules.stream().map(DivisionRule::by).collect(Collectors.toCollection(() -> EnumSet.noneOf(By.class)));
    }

    private boolean holds(DivisionRule rule, Counted member) {
        return value(rule.by(), member)
                .filter(value -> rule.from().map(from -> value >= from).orElse(true)
                        && rule.to().map(to -> value <= to).orElse(true))
                .isPresent();
    }

    private Optional<Integer> value(By by, Counted member) {
        return switch (by) {
            case AGE -> member.born().map(born -> years(born, countedOn));
            case GRADE -> member.grade();
            case EXPERIENCE -> member.years();
        };
    }

    private String said(By by, Counted member) {
        int value = value(by, member).orElseThrow();
        String day = " on " + DateForm.printed(countedOn);
        return switch (by) {
            case AGE -> old(value) + day;
            case GRADE -> (value == 0 ? "in kindergarten" : "in grade " + value) + day;
            case EXPERIENCE -> "in year " + value + " in a club";
        };
    }

    private String bands() {
        return rules.stream()
                .map(rule -> Stream.of(
                                rule.division(),
                                rule.by() == By.AGE ? "age" : column(rule.by()).word(),
                                band(rule))
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining(", "));
    }

    private static String band(DivisionRule rule) {
        String from = rule.from().map(Object::toString).orElse("");
        String to = rule.to().map(Object::toString).orElse("");
        if (from.isEmpty()) {
            return "up to " + to;
        }
        return to.isEmpty() ? from + " and over" : from + " to " + to;
    }

    private static Column column(By by) {
        return switch (by) {
            case AGE -> Column.BIRTH_DATE;
            case GRADE -> Column.GRADE;
            case EXPERIENCE -> Column.YEARS_IN_CLUB;
        };
    }
}
