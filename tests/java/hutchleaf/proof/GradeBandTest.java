package hutchleaf.proof;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class GradeBandTest {
    /** Common Core State Standards, supplement to Appendix A, updated text complexity grade bands, Flesch-Kincaid [S]. */
    @ParameterizedTest
    @CsvSource({
        "PRIMARY, 2-3, 1.98, 5.34",
        "JUNIOR, 4-5, 4.51, 7.73",
        "INTERMEDIATE, 6-8, 6.51, 10.34",
        "SENIOR, 9-10, 8.32, 12.12"
    })
    void aLevelHasThePublishedBandOfItsGrades(Level level, String grades, double lowest, double highest) {
        GradeBand band = GradeBand.of(level);

        assertThat(band.grades()).isEqualTo(grades);
        assertThat(band.lowest()).isEqualTo(lowest);
        assertThat(band.highest()).isEqualTo(highest);
    }

    /** Our own bounds: warn above the band below, fail above the band. */
    @ParameterizedTest
    @CsvSource({"PRIMARY, 1.9, 5.3", "JUNIOR, 4.5, 7.7", "INTERMEDIATE, 7.7, 10.3", "SENIOR, 10.3, 12.1"})
    void aLevelHasItsBounds(Level level, double warnAbove, double failAbove) {
        assertThat(GradeBand.of(level).fleschKincaid()).isEqualTo(new GradeBand.Bounds(warnAbove, failAbove));
    }

    @Test
    void onlyTheYoungestAreReadBySpache() {
        assertThat(GradeBand.of(Level.PRIMARY).spache()).contains(new GradeBand.Bounds(2.0, 3.0));
        assertThat(GradeBand.of(Level.JUNIOR).spache()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void aTextThatFailsLiesAboveNoMoreThanThePublishedBand(Level level) {
        GradeBand band = GradeBand.of(level);

        assertThat(band.fleschKincaid().warnAbove())
                .isLessThan(band.fleschKincaid().failAbove());
        assertThat(band.fleschKincaid().failAbove()).isLessThanOrEqualTo(band.highest());
    }
}
