package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Basis;
import hutchleaf.model.Breed;
import hutchleaf.model.Card;
import hutchleaf.model.Colour;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import hutchleaf.model.Words;
import hutchleaf.rabbit.Answer.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that hold for each breed in each colour, for bucks and does from 1 to 60 months. */
final class EveryRabbitTest {
    private static final int OLDEST = 60;
    private static final List<Level> LEVELS = List.of(Level.values());

    /** The rabbit is "it"; a limit is not a duty; nothing is left unfilled. */
    private static final Pattern NOT_SAID =
            Pattern.compile("\\b(?:he|she|him|her|his|must|null|blow)\\b|[{}]|\\s\\s|\\.\\.|^\\s|\\s$|\\bit it\\b");

    private static final String BUCKS_ALONE = "testicle";

    private static final Set<String> READ = ConcurrentHashMap.newKeySet();

    static Stream<Breed> breeds() {
        return Samples.LIBRARY.tables().breeds().stream();
    }

    @ParameterizedTest
    @MethodSource("breeds")
    void noAnswerIsEmptyAndNoneIsKnownFromAColumnThatIsNotSure(Breed breed) {
        Random random = new Random(breed.name().hashCode());
        for (Colour colour : Samples.LIBRARY.tables().colours()) {
            for (Sex sex : Sex.values()) {
                for (int months = 1; months <= OLDEST; months++) {
                    boolean broken = random.nextInt(4) == 0;
                    Rabbit.Coat coat =
                            new Rabbit.Coat((broken ? "broken " : "") + colour.name(), Optional.of(colour), broken);
                    Rabbit rabbit = Samples.rabbit(
                            Optional.of(breed),
                            coat,
                            sex,
                            Samples.SHOW.minusMonths(months).minusDays(random.nextInt(28)),
                            random.nextInt(3) == 0
                                    ? Optional.empty()
                                    : Optional.of(Samples.pounds(String.valueOf(1 + random.nextInt(16)))));
                    Level level = LEVELS.get(random.nextInt(LEVELS.size()));
                    check(rabbit, breed, colour, level);
                }
            }
        }
    }

    private static void check(Rabbit rabbit, Breed breed, Colour colour, Level level) {
        Findings findings = RabbitEngine.of(rabbit, Samples.SHOW, level);
        String what = breed.name() + ", " + rabbit.coat().variety() + ", " + rabbit.sex() + ", born " + rabbit.born()
                + ", " + level;
        for (String text : texts(findings)) {
            // Few texts are new: each is read once.
            if (READ.add(text) && (text.isBlank() || NOT_SAID.matcher(text).find())) {
                throw new AssertionError(what + ": '" + text + "'");
            }
            if (text.contains(BUCKS_ALONE) && (rabbit.sex() == Sex.DOE || level.compareTo(Level.INTERMEDIATE) < 0)) {
                throw new AssertionError(what + ": '" + text + "'");
            }
        }
        for (Point point : Point.values()) {
            if (unsure(point, rabbit, breed.basis(), colour.basis()) && findings.answer(point) instanceof Known known) {
                throw new AssertionError(what + ": " + point + " is not sure, yet told: " + known.words());
            }
        }
    }

    private static boolean unsure(Point point, Rabbit rabbit, Basis breed, Basis colour) {
        return switch (point) {
            case BODY_TYPE -> !breed.sure("body type");
            case POSE -> !breed.sure("pose");
            case EARS -> !breed.sure("ears");
            case FUR, FUR_TEST -> !breed.sure("fur");
            case SHOW_CLASS -> !breed.sure("classes");
            case WEIGHT_CLASS ->
                !breed.sure("classes") || !breed.sure(rabbit.sex() == Sex.BUCK ? "senior buck" : "senior doe");
            case JUDGES_LOOK_FOR -> !breed.sure("judges look for");
            case EYE -> !colour.sure("eye");
            case NAILS -> !colour.sure("nails") || rabbit.coat().broken();
            case COLOUR_GROUP -> !colour.sure("group") && !rabbit.coat().broken();
            case BREED, VARIETY, SEX, AGE, WEIGHT, EAR_NUMBER, SEX_CHECK -> false;
        };
    }

    private static List<String> texts(Findings findings) {
        List<String> texts = new ArrayList<>();
        for (Point point : Point.values()) {
            Answer answer = findings.answer(point);
            texts.add(answer.basis());
            texts.add(answer instanceof Known known ? known.words() : ((Answer.Check) answer).ask());
        }
        findings.lines().forEach(line -> texts.add(line.say()));
        findings.classNote().ifPresent(texts::add);
        return texts;
    }

    static Stream<Findings> kinds() {
        return Stream.of(Level.values())
                .flatMap(level -> Stream.concat(
                        Stream.of(
                                RabbitEngine.unknown(Samples.SHOW, level),
                                RabbitEngine.of(
                                        Samples.mixed(Sex.DOE, Samples.SHOW.minusMonths(9)), Samples.SHOW, level)),
                        breeds().map(breed -> RabbitEngine.of(
                                Samples.rabbit(breed.name(), "fawn", Sex.BUCK, Samples.SHOW.minusMonths(9)),
                                Samples.SHOW,
                                level))));
    }

    @ParameterizedTest
    @EnumSource
    void cardsAreSayableAndTheirCodesAreFixed(Level level) {
        kinds().forEach(findings -> {
            List<Card> cards = OwnCards.of(findings, level, Samples.LIBRARY);
            assertThat(cards)
                    .hasSizeBetween(
                            level == Level.PRIMARY ? 6 : level == Level.JUNIOR ? 9 : 10,
                            level == Level.PRIMARY ? 6 : level == Level.JUNIOR ? 9 : 12)
                    .isSortedAccordingTo((one, other) -> one.code().compareTo(other.code()))
                    .allSatisfy(card -> {
                        assertThat(card.code().group()).isEqualTo(OwnCards.GROUP);
                        assertThat(card.question().plain()).endsWith("?").doesNotContainPattern(NOT_SAID);
                        assertThat(card.answer().plain()).isNotBlank().doesNotContain("  ");
                        assertThat(card.answer().plain().split("\\s+").length)
                                .as(card.answer().plain())
                                .isLessThanOrEqualTo(30);
                    });
            assertThat(cards.stream().map(Card::code)).doesNotHaveDuplicates();
        });
    }

    @ParameterizedTest
    @EnumSource
    void questionsHoldEnoughPointsForAFullAnswer(Level level) {
        kinds().forEach(findings -> {
            List<JudgeQuestion> questions = OwnQuestions.of(findings, level);
            assertThat(questions).hasSizeBetween(level == Level.PRIMARY ? 5 : 6, 8);
            for (JudgeQuestion question : questions) {
                assertThat(question.about()).isEqualTo(JudgeQuestion.About.OWN_RABBIT);
                assertThat(question.enough()).isBetween(1, question.points().size());
                assertThat(question.points().stream().map(Words::plain))
                        .allSatisfy(point -> assertThat(point).isNotBlank());
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void commentsAreAsManyAsTheLevelBuilds(Level level) {
        kinds().forEach(findings -> {
            List<Comments.Comment> comments = Comments.of(findings, level);
            assertThat(comments).hasSize(level == Level.PRIMARY ? 2 : level == Level.JUNIOR ? 3 : 5);
            assertThat(comments)
                    .allSatisfy(comment -> assertThat(comment)
                            .isInstanceOf(level == Level.PRIMARY ? Comments.Tick.class : Comments.Build.class));
        });
    }
}
