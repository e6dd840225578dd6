package hutchleaf.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One pound is 0.45359237 kg exactly (international yard and pound agreement of 1959; NIST Special Publication 811). */
final class WeightUnitTest {
    @ParameterizedTest
    @CsvSource({
        "3.5 to 5.5, 3.5 to 5.5 lb, about 1.59 to 2.49 kg",
        "up to 3.5, up to 3.5 lb, up to about 1.59 kg",
        "11 and over, 11 lb and over, about 4.99 kg and over",
        "'', '', ''"
    })
    void limitsOfTheTableArePrintedInAUnit(String cell, String pounds, String kilograms) {
        assertThat(WeightUnit.LB.limits(cell)).isEqualTo(pounds);
        assertThat(WeightUnit.KG.limits(cell)).isEqualTo(kilograms);
    }

    /** 100 lb are 45.359237 kg, 1 kg is 2.20462 lb (NIST Handbook 44, appendix C). */
    @ParameterizedTest
    @CsvSource({"1, about 0.45 kg", "10, about 4.54 kg", "4.4, about 2.00 kg", "100, about 45.36 kg"})
    void poundsOfTheRosterAreTurnedIntoKilograms(String pounds, String kilograms) {
        Weight weight = Weight.ofPounds(Double.parseDouble(pounds), pounds + " lb");

        assertThat(weight.in(WeightUnit.KG).asWritten()).isEqualTo(kilograms);
        assertThat(weight.in(WeightUnit.KG).pounds()).isEqualTo(weight.pounds());
        assertThat(weight.in(WeightUnit.LB)).isEqualTo(weight);
    }

    @ParameterizedTest
    @CsvSource({"1, about 2.20 lb", "2.5, about 5.51 lb", "10, about 22.05 lb"})
    void kilogramsOfTheRosterAreTurnedIntoPounds(String kilograms, String pounds) {
        Weight weight = Weight.ofKilograms(Double.parseDouble(kilograms), kilograms + " kg");

        assertThat(weight.in(WeightUnit.LB).asWritten()).isEqualTo(pounds);
        assertThat(weight.in(WeightUnit.KG)).isEqualTo(weight);
    }
}
