package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Breed;
import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import hutchleaf.model.Weight;
import hutchleaf.model.WeightUnit;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Weights against the senior limits of published sources; the file names them by row. */
final class WeightTest {
    private static final LocalDate GROWN = Samples.SHOW.minusMonths(18);

    @ParameterizedTest
    @CsvFileSource(files = "tests/resources/handbook/breed-weights.csv", numLinesToSkip = 1)
    void aSeniorIsWithinTheLimitsOfItsSourceAndNotATenthBeyond(
            String name, Double buckLeast, Double buckMost, Double doeLeast, Double doeMost, String source) {
        check(name, Sex.BUCK, buckLeast, buckMost, source);
        check(name, Sex.DOE, doeLeast, doeMost, source);
    }

    private static void check(String name, Sex sex, Double least, Double most, String source) {
        Breed breed = Samples.breed(name);
        if (!breed.basis().sure("classes") || !breed.basis().sure(sex == Sex.BUCK ? "senior buck" : "senior doe")) {
            assertThat(words(name, sex, 5)).isEqualTo("to check");
            return;
        }
        if (least != null) {
            assertThat(words(name, sex, least)).as(name + ", " + source).startsWith("within its limits: ");
            assertThat(words(name, sex, least - 0.1)).as(name + ", " + source).startsWith("under its limits (");
        }
        if (most != null) {
            assertThat(words(name, sex, most)).as(name + ", " + source).startsWith("within its limits: ");
            assertThat(words(name, sex, most + 0.1)).as(name + ", " + source).startsWith("over its limits (");
        }
    }

    private static String words(String breed, Sex sex, double pounds) {
        return findings(breed, sex, GROWN, Optional.of(Weight.ofPounds(pounds, pounds + " lb")))
                .words(Point.WEIGHT_CLASS)
                .orElse("to check");
    }

    private static Findings findings(String breed, Sex sex, LocalDate born, Optional<Weight> weight) {
        Optional<Breed> row = Optional.of(Samples.breed(breed));
        Rabbit rabbit = Samples.rabbit(row, Samples.coat("black"), sex, born, weight);
        return RabbitEngine.of(rabbit, Samples.SHOW, Level.SENIOR);
    }

    /** 3.5 lb are 1.5876 kg, 5.5 lb are 2.4948 kg, 4.4 lb are 1.9958 kg by the international pound of 1959. */
    @Test
    void aClubThatWeighsInKilogramsReadsKilograms() {
        Rabbit rabbit = Samples.rabbit(
                Optional.of(Samples.breed("Dutch")),
                Samples.coat("black"),
                Sex.BUCK,
                GROWN,
                Optional.of(Weight.ofPounds(4.4, "4.4 lb")));
        Findings findings = RabbitEngine.of(rabbit.in(WeightUnit.KG), Samples.SHOW, Level.SENIOR);

        assertThat(findings.words(Point.WEIGHT_CLASS)).contains("within its limits: about 1.59 to 2.49 kg");
        assertThat(findings.words(Point.WEIGHT)).contains("about 2.00 kg");
    }

    @Test
    void aWeightOutsideTheLimitsIsToldGently() {
        Findings heavy = findings("Dutch", Sex.BUCK, GROWN, Optional.of(Samples.pounds("6")));
        Findings light = findings("Dutch", Sex.BUCK, GROWN, Optional.of(Samples.pounds("3.1")));

        assertThat(heavy.words(Point.WEIGHT_CLASS))
                .contains("over its limits (3.5 to 5.5 lb): ask your leader before entry");
        assertThat(say(heavy))
                .isEqualTo("Its weight is over the limits for a senior buck: 3.5 to 5.5 lb. I have told my leader.");
        assertThat(light.words(Point.WEIGHT_CLASS))
                .contains("under its limits (3.5 to 5.5 lb): ask your leader before entry");
    }

    @ParameterizedTest
    @CsvSource({
        "Dutch, 5, weight limits of a junior buck",
        "Satin, 5, weight limits of a junior buck",
        "Satin, 7, weight limits of an intermediate buck"
    })
    void theLimitsOfYoungerClassesAreLookedUp(String breed, int months, String ask) {
        Findings findings =
                findings(breed, Sex.BUCK, Samples.SHOW.minusMonths(months), Optional.of(Samples.pounds("4")));

        assertThat(findings.answer(Point.WEIGHT_CLASS))
                .isEqualTo(new Answer.Check(ask, "our breed table has the limits of seniors only"));
    }

    @Test
    void aRabbitThatWasNotWeighedIsToBeWeighed() {
        Findings findings = findings("Dutch", Sex.DOE, GROWN, Optional.empty());

        assertThat(findings.answer(Point.WEIGHT_CLASS))
                .isEqualTo(
                        new Answer.Check("weight, within its limits: 3.5 to 5.5 lb", "no weight in the club’s list"));
    }

    /** Satin, buck: its source does not state these limits, so they are not printed as fact. */
    @Test
    void limitsThatAreNotSureAreLookedUp() {
        assertThat(findings("Satin", Sex.BUCK, GROWN, Optional.of(Samples.pounds("9")))
                        .answer(Point.WEIGHT_CLASS))
                .isEqualTo(new Answer.Check("weight limits of a senior buck", BreedPoints.NOT_SURE));
    }

    /** 2.5 kg is 5.51 lb by the international pound of 1959; 2.49476 kg is 5.5 lb. */
    @Test
    void kilogramsAreHeldAgainstPounds() {
        Limits limits = Limits.senior(Samples.breed("Dutch"), Sex.BUCK).orElseThrow();

        assertThat(limits.side(Weight.ofKilograms(2.5, "2.5 kg"))).isEqualTo(Limits.Side.OVER);
        assertThat(limits.side(Weight.ofKilograms(2.495, "2.495 kg"))).isEqualTo(Limits.Side.WITHIN);
    }

    private static String say(Findings findings) {
        return findings.lines().stream()
                .filter(line -> line.point() == Point.WEIGHT_CLASS)
                .findFirst()
                .orElseThrow()
                .say();
    }
}
