package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The age and the class of a rabbit. Sources are ids of {@code sources.md}. */
final class ClassAndAgeTest {
    private static final int OLDEST = 60;

    /**
     * uf-class: "Weight and showroom classes (show rabbit activity page)", University of Florida IFAS Extension; the file
     * names the others by row.
     */
    @ParameterizedTest
    @CsvFileSource(files = "tests/resources/handbook/class-by-age.csv", numLinesToSkip = 1)
    void aClassBeginsAndEndsAtTheMonthsOfItsSource(int classes, String name, int from, Integer before, String source) {
        int end = before == null ? OLDEST + 1 : before;
        for (int months = 0; months <= OLDEST; months++) {
            boolean inside = months >= from && months < end;
            assertThat(showClass(classes == 4 ? "Dutch" : "Californian", months).equals(name + " doe"))
                    .as(months + " months, " + classes + " classes, " + source)
                    .isEqualTo(inside);
        }
    }

    private static String showClass(String breed, int months) {
        String coat = breed.equals("Dutch") ? "black" : "pointed white, black";
        return RabbitEngine.of(
                        Samples.rabbit(breed, coat, Sex.DOE, Samples.SHOW.minusMonths(months)),
                        Samples.SHOW,
                        Level.SENIOR)
                .words(Point.SHOW_CLASS)
                .orElse("");
    }

    /**
     * Worked by hand on the calendar. 31 December and six months would be 31 June: the sixth month is full on 1 July. The
     * last two are the worked examples of {@code breeds/class-by-month.md}.
     */
    @ParameterizedTest
    @CsvSource({
        "2025-12-31, 2026-06-29, 5, 5 months",
        "2025-12-31, 2026-06-30, 5, 5 months",
        "2025-12-31, 2026-07-01, 6, 6 months",
        "2023-08-31, 2024-02-29, 5, 5 months",
        "2023-08-31, 2024-03-01, 6, 6 months",
        "2024-02-29, 2024-08-28, 5, 5 months",
        "2024-02-29, 2024-08-29, 6, 6 months",
        "2024-02-29, 2025-02-28, 11, 11 months",
        "2024-02-29, 2025-03-01, 12, 1 year",
        "2026-01-15, 2026-07-14, 5, 5 months",
        "2026-01-15, 2026-07-15, 6, 6 months",
        "2025-05-03, 2026-08-08, 15, 1 year 3 months",
        "2024-07-08, 2026-08-08, 25, 2 years 1 month",
        "2024-08-08, 2026-08-08, 24, 2 years",
        "2026-07-04, 2026-08-08, 1, 5 weeks",
        "2026-08-01, 2026-08-08, 0, 1 week",
        "2026-08-05, 2026-08-08, 0, under 1 week",
        "2026-06-08, 2026-08-08, 2, 2 months",
        "2025-03-10, 2025-09-08, 5, 5 months",
        "2025-03-10, 2025-10-20, 7, 7 months"
    })
    void anAgeIsCountedInWholeCalendarMonths(LocalDate born, LocalDate show, int months, String words) {
        Age age = new Age(born, show);

        assertThat(age.months()).isEqualTo(months);
        assertThat(age.words()).isEqualTo(words);
    }

    /** The worked examples of {@code breeds/class-by-month.md}: Mini Rex of four classes, Satin of six. */
    @ParameterizedTest
    @CsvSource({
        "Mini Rex, BUCK, 2026-09-08, junior buck",
        "Mini Rex, BUCK, 2026-09-12, senior buck",
        "Satin, DOE, 2026-09-12, intermediate doe",
        "Satin, DOE, 2026-11-08, intermediate doe",
        "Satin, DOE, 2026-11-12, senior doe"
    })
    void theClassIsTheOneThatTheGuideWorksOut(String breed, Sex sex, LocalDate show, String expected) {
        Rabbit rabbit = Samples.rabbit(breed, "black", sex, LocalDate.of(2026, 3, 10));

        assertThat(RabbitEngine.of(rabbit, show, Level.JUNIOR).words(Point.SHOW_CLASS))
                .contains(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Satin | 2026-02-02 | It turned 6 months old on 2 August 2026, 6 days before the show. Enter it in the class of the"
                        + " show day.",
                "Belgian Hare | 2026-02-14 | It turns 6 months old on 14 August 2026, 6 days after the show. If the show day moves,"
                        + " look at its class again.",
                "Satin | 2025-12-08 | It turns 8 months old on the show day itself. We count that day as the older class: ask the"
                        + " show before you enter.",
                "Dutch | 2025-12-08 | none",
                "Satin | 2026-01-31 | none",
                "Satin | 2026-02-01 | It turned 6 months old on 1 August 2026, 7 days before the show. Enter it in the class of the"
                        + " show day."
            })
    void aRabbitAtTheEdgeOfAClassGetsANote(String breed, LocalDate born, String note) {
        Rabbit rabbit = Samples.rabbit(breed, "black", Sex.DOE, born);

        assertThat(RabbitEngine.of(rabbit, Samples.SHOW, Level.SENIOR)
                        .classNote()
                        .orElse("none"))
                .isEqualTo(note);
    }

    @Test
    void aRabbitBornAfterTheShowHasNoAgeAndNoClass() {
        Findings findings = RabbitEngine.of(
                Samples.rabbit("Dutch", "black", Sex.DOE, Samples.SHOW.plusDays(1)), Samples.SHOW, Level.JUNIOR);

        assertThat(findings.words(Point.AGE)).isEmpty();
        assertThat(findings.words(Point.SHOW_CLASS)).isEmpty();
    }

    /** Argente Brun and others: no page was seen for their classes, so the table is not sure. */
    @ParameterizedTest
    @CsvSource({"Argente Brun", "Blue Holicer", "Czech Frosty", "Dwarf Papillon"})
    void aBreedWithUnsureClassesHasItsClassToCheck(String breed) {
        Findings findings = RabbitEngine.of(
                Samples.rabbit(breed, "black", Sex.BUCK, Samples.SHOW.minusMonths(12)), Samples.SHOW, Level.SENIOR);

        assertThat(findings.answer(Point.SHOW_CLASS)).isEqualTo(new Answer.Check("show class", BreedPoints.NOT_SURE));
        assertThat(findings.words(Point.WEIGHT_CLASS)).isEmpty();
    }

    @Test
    void theWordsOfTheEnumsAreThoseOfTheTables() {
        assertThat(ShowClass.values()).extracting(ShowClass::word).containsExactly("junior", "intermediate", "senior");
        assertThat(Samples.LIBRARY.tables().breeds()).allSatisfy(breed -> {
            assertThat(Shape.of(breed.bodyType())).as(breed.name()).isPresent();
            assertThat(Pose.of(breed.pose())).as(breed.name()).isPresent();
            assertThat(breed.ears()).as(breed.name()).isIn("erect", "lop");
            assertThat(Fur.of(breed.fur()).isPresent())
                    .as(breed.name())
                    .isEqualTo(!breed.fur().toLowerCase(Locale.ROOT).equals("unknown"));
        });
    }
}
