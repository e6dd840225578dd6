package hutchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.edition.Stop;
import hutchleaf.model.Breed;
import hutchleaf.model.Card;
import hutchleaf.model.Fact;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Section.Kind;
import hutchleaf.problem.Problems;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The project's own content: enough of it, in its form, and true where a source can be named. */
final class TreeTest {
    private static final Problems PROBLEMS = new Problems();
    private static final Library LIBRARY = LibraryReader.read(new ContentTree(Path.of("content"), "content"), PROBLEMS)
            .orElseThrow(() -> new AssertionError(PROBLEMS.sorted().toString()));

    @Test
    void theTreeReadsWithoutAProblem() {
        assertThat(PROBLEMS.sorted()).isEmpty();
    }

    @Test
    void thereAreEnoughTopicsCardsAndQuestions() {
        assertThat(LIBRARY.topics()).hasSizeGreaterThanOrEqualTo(45);
        assertThat(LIBRARY.topics().stream()
                        .flatMap(topic -> topic.practice().cards().stream())
                        .map(Card::code)
                        .distinct())
                .hasSizeGreaterThanOrEqualTo(200);
        assertThat(LIBRARY.topics().stream().flatMap(topic -> topic.practice().questions().stream()))
                .hasSizeGreaterThanOrEqualTo(80);
    }

    /** °C = (°F − 32) × 5 / 9 (SI Brochure, with the definition of the degree Fahrenheit by it; from memory). */
    @Test
    void aTemperatureIsTheSameInBothScales() {
        Pattern celsius = Pattern.compile("°F \\((\\S+)(?: to (\\S+))? °C\\)");
        Map<String, Fact> facts = LIBRARY.tables().facts();
        List<Fact> fahrenheit = facts.values().stream()
                .filter(fact -> fact.unit().startsWith("°F"))
                .toList();
        assertThat(fahrenheit).hasSizeGreaterThan(8);
        for (Fact fact : fahrenheit) {
            Matcher written = celsius.matcher(fact.unit());
            Fact other = facts.get(fact.id() + " celsius");
            assertThat(written.matches() || other != null)
                    .as("%s has degrees Celsius", fact.id())
                    .isTrue();
            String low = other == null ? written.group(1) : other.low();
            String high = other == null ? Objects.requireNonNullElse(written.group(2), low) : other.high();
            assertSame(fact.low(), low, fact.id());
            assertSame(fact.high(), high, fact.id());
        }
    }

    /** To as many places as are printed. */
    private static void assertSame(String fahrenheit, String celsius, String what) {
        BigDecimal printed = new BigDecimal(celsius.replace('\u2212', '-'));
        BigDecimal reckoned = new BigDecimal(fahrenheit)
                .subtract(new BigDecimal(32))
                .multiply(new BigDecimal(5))
                .divide(new BigDecimal(9), printed.scale(), RoundingMode.HALF_UP);
        assertThat(printed).as(what).isEqualTo(reckoned);
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void eachStopHasWhatItsLevelNeeds(Level level) {
        Edition edition = Edition.of(LIBRARY, level, new Problems());
        assertThat(edition.stops()).hasSize(level == Level.PRIMARY ? 8 : 16);
        for (Stop stop : edition.stops()) {
            Leaf leaf = stop.leaf();
            String what = leaf.head().path() + " for " + level.word();
            assertThat(leaf.section(Kind.STEPS).orElseThrow().steps())
                    .as("steps of " + what)
                    .hasSizeGreaterThanOrEqualTo(3);
            assertThat(leaf.section(Kind.SAY_IT)).as("say-it of " + what).isPresent();
            assertThat(leaf.section(Kind.CAUTION)).as("caution of " + what).isPresent();
            assertThat(leaf.practice().cards()).as("cards of " + what).hasSizeGreaterThanOrEqualTo(2);
            assertThat(leaf.practice().questions()).as("questions of " + what).isNotEmpty();
        }
    }

    /** The stop rule stands in the caution of every stop from 5 to 13. */
    @ParameterizedTest
    @EnumSource(
            value = Level.class,
            names = {"JUNIOR", "INTERMEDIATE", "SENIOR"})
    void theStopRuleStandsWhereTheRabbitIsTurned(Level level) {
        Edition.of(LIBRARY, level, new Problems()).stops().stream()
                .filter(stop -> stop.station().no() >= 5 && stop.station().no() <= 13)
                .forEach(stop -> assertThat(stop.leaf()
                                .section(Kind.CAUTION)
                                .orElseThrow()
                                .text()
                                .plain())
                        .as(stop.leaf().head().path())
                        .contains("kicks, pants or shakes"));
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void thirtyToSixtyCardsAreCore(Level level) {
        long core = Edition.of(LIBRARY, level, new Problems()).deck().stream()
                .filter(card -> card.need() == Card.Need.CORE)
                .count();
        assertThat(core).as("core cards for " + level.word()).isBetween(30L, 60L);
    }

    /** Source: veterinary anatomy, S14 and S15 of sources.md: I 2/1, C 0/0, P 3/2, M 3/3 on each side. */
    @Test
    void twentyEightTeethFollowFromTheDentalFormula() {
        int side = (2 + 1) + 0 + (3 + 2) + (3 + 3);
        assertThat(fact("teeth")).as("teeth").isEqualTo(2 * side).isEqualTo(28);
        assertThat(fact("incisors") + fact("premolars") + fact("molars")).isEqualTo(2 * side);
    }

    /** Source: S81 and S102 of sources.md: four toes and a dewclaw in front, four toes behind. */
    @Test
    void eighteenNailsAreFiveInFrontAndFourBehind() {
        assertThat(fact("front nails")).as("front nails").isEqualTo(5);
        assertThat(fact("hind nails")).as("hind nails").isEqualTo(4);
        assertThat(fact("all nails")).as("all nails").isEqualTo(2 * 5 + 2 * 4);
    }

    private static int fact(String id) {
        return Stream.of(LIBRARY.tables().facts().get(id))
                .map(fact -> Integer.parseInt(fact.low()))
                .findFirst()
                .orElseThrow();
    }

    /** Sources: the body types and coats pages of a university extension (uf-body, uf-coat, uf-class) and breed clubs. */
    @ParameterizedTest
    @CsvSource({
        "Dutch, compact, flyback, 4",
        "New Zealand, commercial, flyback, 6",
        "Flemish Giant, semi-arch, rollback, 6",
        "Checkered Giant, full-arch, flyback, 6",
        "Himalayan, cylindrical, flyback, 4",
        "Rex, commercial, rex, 4",
        "Silver Fox, commercial, standing, 6",
        "English Angora, compact, wool, 4",
        "Satin, commercial, satin, 6"
    })
    void breedsHaveTheBodyFurAndClassesThatTheirSourcesGive(String name, String body, String fur, int classes) {
        Map<String, Breed> breeds =
                LIBRARY.tables().breeds().stream().collect(Collectors.toMap(Breed::name, breed -> breed));
        assertThat(breeds).containsKey(name);
        assertThat(breeds.values().stream().filter(breed -> breed.name().equals(name)))
                .singleElement()
                .satisfies(breed -> {
                    assertThat(breed.bodyType()).as("body type of " + name).isEqualTo(body);
                    assertThat(breed.fur()).as("fur of " + name).isEqualTo(fur);
                    assertThat(breed.classes()).as("classes of " + name).isEqualTo(classes);
                });
    }

    @Test
    void theBodyTypesAreFive() {
        assertThat(LIBRARY.tables().breeds().stream().map(Breed::bodyType).distinct())
                .containsExactlyInAnyOrder("compact", "commercial", "semi-arch", "full-arch", "cylindrical");
    }
}
