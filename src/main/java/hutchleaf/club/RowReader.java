package hutchleaf.club;

import hutchleaf.model.Breed;
import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Rabbit.Coat;
import hutchleaf.model.Sex;
import hutchleaf.model.Weight;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Problems;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** Reads one row of the roster: a member and a rabbit. All that is wrong with it is noted in the row itself. */
final class RowReader {
    private static final int LAST_GRADE = 12;
    private static final int MOST_YEARS = 20;

    private final Club club;
    private final DateForm dates;
    private final Divisions divisions;
    private final BreedNames breeds;
    private final ColourNames colours;
    private final LocalDate today;
    private final boolean decimalComma;

    /** @param decimalComma whether a number may have one */
    RowReader(Club club, DateForm dates, Divisions divisions, Library library, LocalDate today, boolean decimalComma) {
        this.club = club;
        this.dates = dates;
        this.divisions = divisions;
        this.breeds = new BreedNames(library.tables().breeds());
        this.colours = new ColourNames(library.tables());
        this.today = today;
        this.decimalComma = decimalComma;
    }

    /** The row; its problems are those of the cells. */
    Row read(Cells cells) {
        RowChecks.formulas(cells);
        String name = cells.need(Column.MEMBER_NAME);
        return new Row(cells.at(), name, person(cells), rabbit(cells), cells);
    }

    private Row.Person person(Cells cells) {
        Problems own = new Problems();
        Cells row = cells.reportingTo(own);
        Optional<LocalDate> born = date(row, Column.BIRTH_DATE);
        Divisions.Counted counted =
                new Divisions.Counted(born, grade(row), row.whole(Column.YEARS_IN_CLUB, 1, MOST_YEARS));
        Row.Person person = new Row.Person(
                counted,
                row.yesOrNo(Column.FIRST_YEAR_WITH_RABBITS),
                level(row),
                NeedsCells.read(row),
                own.hasErrors() ? Optional.empty() : divisions.of(counted, row.at(), own));
        born.ifPresent(
                day -> RowChecks.memberAge(Divisions.years(day, club.show().date()), row));
        RowChecks.study(person, row);
        cells.problems().addAll(own);
        return person;
    }

    private Optional<Integer> grade(Cells cells) {
        String text = cells.text(Column.GRADE).toLowerCase(Locale.ROOT);
        if (text.matches("k|kg|kindergarten")) {
            return Optional.of(0);
        }
        String number = text.replaceFirst("^grade ", "").replaceFirst("(st|nd|rd|th)( grade)?$", "");
        if (number.matches("\\d{1,2}") && Integer.parseInt(number) <= LAST_GRADE) {
            return Optional.of(Integer.parseInt(number));
        }
        if (!text.isEmpty()) {
            cells.unreadable(Column.GRADE, "write a school grade from 0, which is kindergarten, to " + LAST_GRADE);
        }
        return Optional.empty();
    }

    private static Optional<Level> level(Cells cells) {
        String text = cells.text(Column.STUDY_LEVEL).toLowerCase(Locale.ROOT);
        Optional<Level> level = Level.of(text);
        if (level.isEmpty() && !text.isEmpty()) {
            cells.unreadable(Column.STUDY_LEVEL, NearMiss.mend(text, Level.words()));
        }
        return level;
    }

    /** A day that is not after today. */
    private Optional<LocalDate> date(Cells cells, Column column) {
        return Optional.of(cells.text(column))
                .filter(text -> !text.isEmpty())
                .flatMap(text -> dates.read(column.word(), text, cells.at(), cells.problems()))
                .filter(day -> {
                    if (day.isAfter(today)) {
                        cells.error(
                                "'" + column.word() + "' is " + DateForm.printed(day) + ", after today",
                                "look at the year");
                    }
                    return !day.isAfter(today);
                });
    }

    private Optional<Rabbit> rabbit(Cells cells) {
        String name = cells.need(Column.RABBIT_NAME);
        String breedName = cells.need(Column.BREED);
        Optional<Breed> breed = breeds.find(breedName);
        boolean mixed = BreedNames.mixed(breedName);
        if (!breedName.isEmpty() && breed.isEmpty() && !mixed) {
            cells.error("unknown breed '" + breedName + "'", breeds.mend(breedName));
        }
        Optional<Coat> coat = coat(cells, breed, mixed);
        coat.ifPresent(known -> BreedColours.check(breed, known, cells));
        Optional<Sex> sex = sex(cells);
        Optional<LocalDate> born = date(cells, Column.RABBIT_BIRTH_DATE);
        if (!cells.has(Column.RABBIT_BIRTH_DATE)) {
            cells.need(Column.RABBIT_BIRTH_DATE);
        }
        born.ifPresent(day -> RowChecks.rabbitAge(name, day, club.show().date(), cells));
        String ear = cells.need(Column.EAR_NUMBER);
        Optional<Weight> weight = WeightCell.read(cells, decimalComma);
        Optional<Rabbit> rabbit = coat.flatMap(known -> sex.flatMap(
                kind -> born.map(day -> new Rabbit(name, breed, known, kind, day, ear, weight, cells.at()))));
        rabbit.ifPresent(read -> WeightLimits.check(read, club.show().date(), cells));
        return rabbit;
    }

    /** The coat; where the breed is unknown, only that something is written. */
    private Optional<Coat> coat(Cells cells, Optional<Breed> breed, boolean mixed) {
        String written = cells.need(Column.COLOUR);
        if (written.isEmpty() || (breed.isEmpty() && !mixed)) {
            return Optional.empty();
        }
        ColourNames.Found found = colours.find(breed, written);
        if (found.coat().isEmpty()) {
            cells.error(found.what(), found.mend());
        }
        return found.coat();
    }

    private static Optional<Sex> sex(Cells cells) {
        String text = cells.need(Column.SEX).toLowerCase(Locale.ROOT);
        return switch (text) {
            case "buck", "b", "male", "m" -> Optional.of(Sex.BUCK);
            case "doe", "d", "female", "f" -> Optional.of(Sex.DOE);
            case "" -> Optional.empty();
            default -> {
                cells.unreadable(Column.SEX, "write buck or doe");
                yield Optional.empty();
            }
        };
    }
}
