package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Section;
import hutchleaf.model.Sex;
import hutchleaf.model.Topic;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The scripts of the routine, read from the content, as they are said of one rabbit. */
final class ScriptsTest {
    private static final int SEX_STOP = 12;

    /** A script of the content with its blanks filled. */
    private static String script(int stop, Level level, Findings findings) {
        Topic topic = Samples.LIBRARY.topics().stream()
                .filter(found -> found.head().path().startsWith("routine/"))
                .filter(found -> found.head().code() == stop)
                .findFirst()
                .orElseThrow();
        String text = topic.sections().stream()
                .filter(section -> section.kind() == Section.Kind.SAY_IT)
                .filter(section -> section.levels().holds(level))
                .findFirst()
                .orElseThrow()
                .text()
                .plain();
        for (Point point : Point.values()) {
            text = text.replace(
                    "{" + point.blank() + "}", findings.filling(point.blank()).orElse("____"));
        }
        return text.replace("{rabbit.name}", findings.filling("rabbit.name").orElse("____"));
    }

    private static String said(int stop, Level level, Rabbit rabbit) {
        Findings findings = RabbitEngine.of(rabbit, Samples.SHOW, level);
        return findings.forRabbit(stop, level, script(stop, level, findings));
    }

    private static Rabbit dutch(Sex sex, int months) {
        return Samples.rabbit("Dutch", "black", sex, Samples.SHOW.minusMonths(months));
    }

    /** S81 and S82, showmanship forms of two breeders' associations: a junior-class buck may show both or neither. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "INTERMEDIATE | BUCK | 6 | My rabbit is a buck. Both testicles are down.",
                "SENIOR | BUCK | 6 | My rabbit is a buck, as it is entered. Both testicles are down.",
                "INTERMEDIATE | BUCK | 5 | My rabbit is a buck. Both testicles are down. (Or: none is down yet, as a junior class"
                        + " allows.)",
                "SENIOR | DOE | 5 | My rabbit is a doe, as it is entered.",
                "INTERMEDIATE | DOE | 9 | My rabbit is a doe.",
                "JUNIOR | BUCK | 5 | My rabbit is a buck."
            })
    void theSexStopSaysWhatFitsABuckOrADoeOfItsAge(Level level, Sex sex, int months, String end) {
        assertThat(said(SEX_STOP, level, dutch(sex, months)))
                .endsWith(end)
                .doesNotContain("If it is")
                .doesNotContain("____");
    }

    @ParameterizedTest
    @EnumSource(names = {"INTERMEDIATE", "SENIOR"})
    void aDoesScriptNamesNoTesticlesButTheOneThatIsLookedFor(Level level) {
        assertThat(said(SEX_STOP, level, dutch(Sex.DOE, 9)).replace("an undescended testicle", ""))
                .doesNotContain("testicle");
    }

    @Test
    void aScriptForAnyRabbitStaysAsItIs() {
        Findings any = RabbitEngine.unknown(Samples.SHOW, Level.SENIOR);
        String script = script(SEX_STOP, Level.SENIOR, any);

        assertThat(any.forRabbit(SEX_STOP, Level.SENIOR, script))
                .isEqualTo(script)
                .contains("If it is a buck, I add:");
    }

    @Test
    void otherStopsAreLeftAlone() {
        Findings findings = RabbitEngine.of(dutch(Sex.BUCK, 9), Samples.SHOW, Level.SENIOR);
        String script = "If it is a buck, I stop.";

        assertThat(findings.forRabbit(6, Level.SENIOR, script)).isEqualTo(script);
        assertThat(said(3, Level.SENIOR, dutch(Sex.BUCK, 9)))
                .contains(
                        "The breed is Dutch, the variety black. It is a buck. Its age is 9 months, its show class senior"
                                + " buck and its ear number PB1.");
    }

    @Test
    void aRabbitOfMixedBreedIsHeldToNoBreed() {
        Rabbit mixed = Samples.mixed(Sex.DOE, Samples.SHOW.minusMonths(14));
        Stream<String> scripts = Stream.of(2, 3, 4, 16)
                .flatMap(stop -> Stream.of(Level.values()).map(level -> said(stop, level, mixed)));

        assertThat(scripts)
                .allSatisfy(script -> assertThat(script)
                        .doesNotContain("mixed breed is")
                        .doesNotContain("is mixed breed")
                        .doesNotContain("as the breed")
                        .doesNotContain("right for the breed")
                        .doesNotContain("as the standard asks")
                        .doesNotContain("this breed")
                        .doesNotContain("its breed"));
        assertThat(said(3, Level.JUNIOR, mixed)).contains("This is Pebble. It is of mixed breed, variety ____.");
        assertThat(said(3, Level.PRIMARY, mixed)).contains("My mixed breed rabbit is Pebble.");
    }

    @Test
    void aMixedRabbitHasNoShowClassAndAYoungBuckOfItNoClassRule() {
        Rabbit mixed = Samples.mixed(Sex.BUCK, Samples.SHOW.minusMonths(5));
        Findings findings = RabbitEngine.of(mixed, Samples.SHOW, Level.SENIOR);

        assertThat(findings.answer(Point.SHOW_CLASS))
                .isEqualTo(
                        new Answer.Check("whether your show takes a mixed breed", "a mixed breed has no breed class"));
        assertThat(said(SEX_STOP, Level.SENIOR, mixed))
                .endsWith("(Or: none is down yet, and it is under 6 months old.)");
    }
}
