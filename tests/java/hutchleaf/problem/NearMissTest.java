package hutchleaf.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NearMissTest {
    private static final List<String> LEVELS = List.of("primary", "junior", "intermediate", "senior");

    @ParameterizedTest
    @CsvSource({"primry, primary", "JUNIOR, junior", "junor, junior", "intermidiate, intermediate", "seniors, senior"})
    void aWordWithAFewWrongLettersIsGuessed(String found, String meant) {
        assertThat(NearMiss.of(found, LEVELS)).contains(meant);
        assertThat(NearMiss.mend(found, LEVELS)).isEqualTo("did you mean '" + meant + "'?");
    }

    @Test
    void aWordThatIsFarFromAllGetsTheWholeList() {
        assertThat(NearMiss.of("expert", LEVELS)).isEmpty();
        assertThat(NearMiss.mend("expert", LEVELS)).isEqualTo("use one of: primary, junior, intermediate, senior");
    }

    @Test
    void ofTwoThatAreEquallyNearTheFirstByLetterIsGuessed() {
        assertThat(NearMiss.of("cat", List.of("rat", "bat"))).contains("bat");
    }

    @Test
    void anEmptyWordAndAnEmptyListGuessNothing() {
        assertThat(NearMiss.of("", LEVELS)).isEmpty();
        assertThat(NearMiss.of("junior", List.of())).isEmpty();
    }
}
