package hutchleaf.club;

import hutchleaf.content.FrontMatter;
import hutchleaf.content.FrontMatter.Field;
import hutchleaf.model.Club.Price;
import hutchleaf.model.Club.Printer;
import hutchleaf.model.Club.Saver;
import hutchleaf.model.Club.Spelling;
import hutchleaf.model.WeightUnit;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Correction;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.PrinterNumbers;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The values of {@code club.md} by key. Reading one reports what is wrong with it and gives its default. */
final class Keys {
    private static final int LEAST_MINUTES = 5;
    private static final int USUAL_MINUTES = 15;
    private static final int MOST_MINUTES = 60;
    private static final int SHORT_DAY = 3;
    private static final Price NOT_GIVEN = new Price("", BigDecimal.ZERO);

    private final FrontMatter front;
    private final Problems problems;
    private final DateForm dates;

    Keys(FrontMatter front, Problems problems) {
        this.front = front;
        this.problems = problems;
        this.dates = front.field("date-form")
                .flatMap(field -> DateForm.of(field.value(), field.at(), problems))
                .orElse(DateForm.ISO);
    }

    FrontMatter front() {
        return front;
    }

    DateForm dates() {
        return dates;
    }

    void report(String key, String what, String mend) {
        front.field(key).ifPresent(field -> problems.add(field.at(), what, mend));
    }

    /** The value; empty where the key is missing. */
    Optional<String> text(String key) {
        return front.field(key).map(Field::value).filter(value -> !value.isEmpty());
    }

    Optional<LocalDate> date(String key) {
        return front.field(key)
                .filter(field -> !field.value().isEmpty())
                .flatMap(field -> dates.read(key, field.value(), field.at(), problems));
    }

    Optional<LocalDate> neededDate(String key) {
        front.require(key, problems);
        return date(key);
    }

    Paper paper() {
        return oneOf("paper", Paper.values(), Paper.LETTER);
    }

    Spelling spelling() {
        return oneOf("spelling", Spelling.values(), Spelling.UK);
    }

    WeightUnit weights() {
        return oneOf("weights", WeightUnit.values(), WeightUnit.LB);
    }

    Saver saver() {
        return oneOf("saver", Saver.values(), Saver.NO);
    }

    Price price(String key) {
        return front.field(key)
                .flatMap(field -> Prices.read(key, field, problems))
                .orElse(NOT_GIVEN);
    }

    /** Minutes a day, 5 to 60. */
    int minutes() {
        Optional<String> written = text("minutes-a-day");
        Optional<Integer> minutes = written.filter(text -> text.matches("\\d{1,2}"))
                .map(Integer::parseInt)
                .filter(number -> number >= LEAST_MINUTES && number <= MOST_MINUTES);
        if (written.isPresent() && minutes.isEmpty()) {
            report(
                    "minutes-a-day",
                    "'minutes-a-day' is '" + written.get() + "'",
                    "write a whole number from " + LEAST_MINUTES + " to " + MOST_MINUTES);
        }
        return minutes.orElse(USUAL_MINUTES);
    }

    /** Days by their names, in full or by the first three letters; never all seven. */
    Set<DayOfWeek> restDays() {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String word : list("rest-days")) {
            String name = word.toLowerCase(Locale.ROOT);
            Optional<DayOfWeek> day = Arrays.stream(DayOfWeek.values())
                    .filter(known -> name(known).equals(name)
                            || name(known).substring(0, SHORT_DAY).equals(name))
                    .findFirst();
            if (day.isEmpty()) {
                List<String> names =
                        Arrays.stream(DayOfWeek.values()).map(Keys::name).toList();
                report("rest-days", "unknown day '" + word + "'", NearMiss.mend(word, names));
            }
            day.ifPresent(days::add);
        }
        if (days.size() == DayOfWeek.values().length) {
            report("rest-days", "every day is a rest day", "leave at least one day for the cards");
        }
        return days;
    }

    /** Figures that the content tree has. */
    Set<String> leaveOut(Collection<String> drawings) {
        Set<String> figures = new TreeSet<>(list("leave-out"));
        figures.stream()
                .filter(figure -> !drawings.contains(figure))
                .forEach(figure -> report(
                        "leave-out",
                        "no figure '" + figure + "'",
                        NearMiss.of(figure, drawings)
                                .map(near -> "did you mean '" + near + "'?")
                                .orElse("name one of the content, for example figures/sex-guide.svg")));
        return figures;
    }

    /** What the printer does to a page; nothing where the key is missing. */
    Printer printer(Place file) {
        return front.field("printer")
                .filter(field -> !field.value().isEmpty())
                .flatMap(field -> PrinterNumbers.read(field.value(), "printer: " + field.value(), field.at(), problems)
                        .map(correction -> new Printer(correction, field.at())))
                .orElseGet(() -> new Printer(Correction.NONE, file));
    }

    private List<String> list(String key) {
        return front.field(key).map(Field::list).orElse(List.of());
    }

    private <E extends Enum<E>> E oneOf(String key, E[] values, E usual) {
        Optional<String> written = text(key).map(text -> text.toLowerCase(Locale.ROOT));
        Optional<E> value = written.flatMap(text ->
                Arrays.stream(values).filter(known -> name(known).equals(text)).findFirst());
        if (written.isPresent() && value.isEmpty()) {
            List<String> names = Arrays.stream(values).map(Keys::name).toList();
            report(key, "'" + key + "' is '" + written.get() + "'", NearMiss.mend(written.get(), names));
        }
        return value.orElse(usual);
    }

    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
