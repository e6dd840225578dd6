package hutchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.edition.Edition;
import hutchleaf.model.Breed;
import hutchleaf.model.Card;
import hutchleaf.model.Colour;
import hutchleaf.model.Fact;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Topic;
import hutchleaf.problem.Problems;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the tree teaches, counted, and held against handbooks; the sources are ids of {@code sources.md}. */
final class KnowledgeTest {
    private static final Library LIBRARY = read();

    private static Library read() {
        Problems problems = new Problems();
        return LibraryReader.read(new ContentTree(Path.of("content"), "content"), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted().toString()));
    }

    private static Edition edition(Level level) {
        return Edition.of(LIBRARY, level, new Problems());
    }

    private static Fact fact(String id) {
        return Objects.requireNonNull(LIBRARY.tables().facts().get(id), id);
    }

    @ParameterizedTest
    @CsvSource({"PRIMARY, 90", "JUNIOR, 220", "INTERMEDIATE, 400", "SENIOR, 600"})
    void aDeckHoldsAllThatAMemberMayBeAsked(Level level, int cards) {
        assertThat(edition(level).deck()).hasSizeGreaterThanOrEqualTo(cards);
    }

    @ParameterizedTest
    @EnumSource
    void aDeckHasThirtyToSixtyCoreCards(Level level) {
        assertThat(edition(level).deck().stream().filter(card -> card.need() == Card.Need.CORE))
                .hasSizeBetween(30, 60);
    }

    @ParameterizedTest
    @EnumSource
    void aDeckHasFifteenPictureCardsOrMore(Level level) {
        assertThat(edition(level).deck().stream().filter(card -> card.picture().isPresent()))
                .hasSizeGreaterThanOrEqualTo(15);
    }

    private static Stream<JudgeQuestion> questions() {
        return LIBRARY.topics().stream().map(Topic::practice).flatMap(practice -> practice.questions().stream());
    }

    @ParameterizedTest
    @EnumSource
    void fiftyQuestionsReachEachLevelAndFifteenStartThere(Level level) {
        assertThat(questions().filter(question -> question.levels().holds(level)))
                .as("reach " + level)
                .hasSizeGreaterThanOrEqualTo(50);
        assertThat(questions().filter(question -> question.levels().from() == level))
                .as("start at " + level)
                .hasSizeGreaterThanOrEqualTo(15);
    }

    @Test
    void someQuestionsAreAboutTheMembersOwnRabbit() {
        for (Level level : Level.values()) {
            assertThat(questions()
                            .filter(question -> question.levels().holds(level))
                            .filter(question -> question.about() == JudgeQuestion.About.OWN_RABBIT))
                    .as(level.word())
                    .hasSizeGreaterThanOrEqualTo(5);
        }
    }

    @Test
    void theGlossaryHasAHundredAndEightyTermsOrMore() {
        assertThat(LIBRARY.topics().stream()
                        .flatMap(topic -> topic.practice().terms().stream())
                        .map(term -> term.term().toLowerCase(Locale.ROOT))
                        .distinct())
                .hasSizeGreaterThanOrEqualTo(180);
    }

    /**
     * Sources: teeth S14 (a veterinary education wiki), incisors S16 (USDA); toes and nails S81 (a state association's score
     * sheet) and S102; gestation S09 (a veterinary manual, owner edition); temperature S01 (footnoted to a veterinary manual).
     */
    @ParameterizedTest
    @CsvSource({
        "teeth, 28, 28",
        "incisors, 6, 6",
        "premolars, 10, 10",
        "molars, 12, 12",
        "front nails, 5, 5",
        "hind nails, 4, 4",
        "all nails, 18, 18",
        "gestation, 31, 33",
        "temperature, 101.5, 104.2",
        "temperature celsius, 38.6, 40.1"
    })
    void aFigureIsTheOneOfItsSource(String id, String low, String high) {
        assertThat(fact(id).low()).isEqualTo(low);
        assertThat(fact(id).high()).isEqualTo(high);
    }

    /** Another route to the same figures: 5/9 of the degrees above 32; 2 (I 2/1 + C 0/0 + P 3/2 + M 3/3) = 28. */
    @Test
    void figuresThatHangTogetherAgree() {
        assertThat(celsius(fact("temperature").low()))
                .isEqualTo(fact("temperature celsius").low());
        assertThat(celsius(fact("temperature").high()))
                .isEqualTo(fact("temperature celsius").high());
        assertThat(2 * (2 + 1 + 3 + 2 + 3 + 3)).isEqualTo(number("teeth"));
        assertThat(number("incisors") + number("premolars") + number("molars")).isEqualTo(number("teeth"));
    }

    private static String celsius(String fahrenheit) {
        return String.format(Locale.ROOT, "%.1f", (Double.parseDouble(fahrenheit) - 32) * 5 / 9);
    }

    private static int number(String id) {
        return Integer.parseInt(fact(id).low());
    }

    /** Names as they are said: straight apostrophes, no capitals. */
    private static String plain(String name) {
        return name.replace('’', '\'').toLowerCase(Locale.ROOT);
    }

    private static Breed breed(String name) {
        return LIBRARY.tables().breeds().stream()
                .filter(breed -> plain(breed.name()).equals(plain(name)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no breed " + name));
    }

    /** Senior weights whose source was read; the file names it by row. */
    @ParameterizedTest
    @CsvFileSource(files = "tests/resources/handbook/breed-weights.csv", numLinesToSkip = 1)
    void aBreedHasTheSeniorWeightsOfItsSource(
            String name, String buckMin, String buckMax, String doeMin, String doeMax, String source) {
        Breed.Weights weights = breed(name).weights();
        assertThat(weights.buck()).as("bucks, " + source).isEqualTo(written(buckMin, buckMax));
        assertThat(weights.doe()).as("does, " + source).isEqualTo(written(doeMin, doeMax));
    }

    private static String written(String min, String max) {
        if (min == null) {
            return "up to " + max;
        }
        return max == null ? min + " and over" : min + " to " + max;
    }

    /** Eye colours that a source states outright; the file names it by row. */
    @ParameterizedTest
    @CsvFileSource(files = "tests/resources/handbook/eye-colours.csv", delimiter = '|', numLinesToSkip = 1)
    void aColourHasTheEyeOfItsSource(String name, String eye, String source) {
        assertThat(LIBRARY.tables().colours().stream()
                        .filter(colour -> plain(colour.name()).equals(plain(name)))
                        .map(Colour::eye)
                        .map(KnowledgeTest::grey))
                .as(name + ", " + source)
                .containsExactly(grey(eye));
    }

    /** The spelling of our tree. */
    private static String grey(String text) {
        return text.replace("gray", "grey");
    }

    /** Breeds that a source gives as examples of a body type or a fur type; the file names it by row. */
    @ParameterizedTest
    @CsvFileSource(files = "tests/resources/handbook/type-examples.csv", numLinesToSkip = 1)
    void aBreedIsOfTheTypeThatASourceGivesItFor(String kind, String type, String name, String source) {
        Breed breed = breed(name);
        assertThat(kind.equals("fur") ? breed.fur() : breed.bodyType())
                .as(kind + " of " + name + ", " + source)
                .isEqualTo(type);
    }

    @Test
    void everyRowOfTheBreedTableNamesItsSources() {
        List<String> without = LIBRARY.tables().breeds().stream()
                .filter(breed -> breed.basis().sources().isEmpty())
                .map(Breed::name)
                .toList();
        assertThat(without).isEmpty();
    }

    @Test
    void everyColourNamesItsSources() {
        assertThat(LIBRARY.tables().colours()).hasSize(64);
        assertThat(LIBRARY.tables().colours().stream()
                        .filter(colour -> colour.basis().sources().isEmpty())
                        .map(Colour::name))
                .isEmpty();
    }
}
