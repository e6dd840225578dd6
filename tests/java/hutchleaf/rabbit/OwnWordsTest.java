package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Sex;
import hutchleaf.model.Words;
import hutchleaf.rabbit.Comments.Build;
import hutchleaf.rabbit.Comments.Tick;
import hutchleaf.rabbit.Findings.Line;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a member reads of the own rabbit: lines, cards, questions and comments. */
final class OwnWordsTest {
    private static Findings demo(String rabbit, Level level) {
        return RabbitEngine.of(Samples.demo(rabbit), Samples.SHOW, level);
    }

    @Test
    void aPrimaryMemberSaysShortThings() {
        assertThat(demo("Button", Level.PRIMARY).lines())
                .extracting(Line::stop, Line::say)
                .containsExactly(
                        tuple(2, "Its shape is compact: it is short and round."),
                        tuple(2, "Its head stays low. I do not press it."),
                        tuple(3, "My rabbit is a Polish."),
                        tuple(3, "It is a doe, a girl."),
                        tuple(3, "It is 8 months old."),
                        tuple(4, "Its ears stand up."),
                        tuple(4, "The ear number is QB11."),
                        tuple(6, "Its eyes are pink."),
                        tuple(15, "Its fur is flyback."),
                        tuple(15, "I stroke it up, and it snaps back at once."));
    }

    @Test
    void aSeniorMemberSaysWhyAndFinishesWhatIsNotKnown() {
        assertThat(demo("Boulder", Level.SENIOR).lines())
                .extracting(Line::stop, Line::say)
                .containsExactly(
                        tuple(
                                2,
                                "Its body type is semi-arch: it is low in the shoulder, and the rise begins behind it and"
                                        + " rounds to the tail."),
                        tuple(
                                2,
                                "Its forelegs lie flat, its front feet are under its eyes and its head is low. Then it may"
                                        + " move, so that you see the rise."),
                        tuple(3, "The breed is Flemish Giant."),
                        tuple(3, "The variety is fawn."),
                        tuple(3, "It is a buck."),
                        tuple(3, "It is 1 year 1 month old."),
                        tuple(3, "Its show class is senior buck, by its age: its breed has six classes."),
                        tuple(3, "It weighs 15.2 lb."),
                        tuple(3, "Its weight is within the limits for a senior buck: 13 lb and over."),
                        tuple(4, "The ear carriage is erect, as the breed should be."),
                        tuple(4, "The number in its left ear is AV12."),
                        tuple(6, "Its eyes are …"),
                        tuple(9, "Its nails are …"),
                        tuple(12, "It is a buck. Both testicles are down."),
                        tuple(15, "The fur type is rollback."),
                        tuple(15, "I stroke it towards the head, and it drifts back slowly and softly."),
                        tuple(15, "Its variety belongs to the group called wide band."),
                        tuple(
                                16,
                                "In a Flemish Giant, judges look for a long, strong body with a mandolin outline, in one of"
                                        + " seven colours."));
    }

    @Test
    void woolIsPartedAndNeverStrokedUp() {
        Findings findings = RabbitEngine.of(
                Samples.rabbit("Jersey Wooly", "black", Sex.DOE, Samples.SHOW.minusMonths(9)),
                Samples.SHOW,
                Level.SENIOR);

        assertThat(findings.lines())
                .extracting(Line::say)
                .contains("I part it gently and do not rub it: it does not lie flat, and it is long and soft.")
                .noneSatisfy(say -> assertThat(say).contains("stroke"));
        assertThat(OwnCards.of(findings, Level.SENIOR, Samples.LIBRARY))
                .extracting(OwnWordsTest::question)
                .contains("You part Pebble’s wool gently. What should it be like?")
                .noneSatisfy(question -> assertThat(question).contains("stroke"));
    }

    @Test
    void aMixedBreedIsAskedForNothingThatOnlyABreedHas() {
        Findings findings =
                RabbitEngine.of(Samples.mixed(Sex.DOE, Samples.SHOW.minusMonths(9)), Samples.SHOW, Level.SENIOR);

        assertThat(findings.lines())
                .extracting(Line::say)
                .contains("It is of mixed breed.", "It is of mixed breed, so it has no breed class.")
                .hasSize(16);
        assertThat(OwnCards.of(findings, Level.SENIOR, Samples.LIBRARY))
                .hasSize(10)
                .extracting(OwnWordsTest::question, OwnWordsTest::answer)
                .contains(tuple(
                        "Which show class may take Pebble, a mixed breed?",
                        "Often showmanship, where the member is judged: check the rule book."));
        assertThat(OwnQuestions.of(findings, Level.SENIOR)).hasSize(6);
    }

    @Test
    void everyAnswerTellsWhereItComesFrom() {
        Findings findings = demo("Domino", Level.PRIMARY);

        assertThat(findings.answer(Point.SHOW_CLASS))
                .isEqualTo(new Answer.Known("senior buck", "4-class rule, and its age on show day"));
        assertThat(findings.answer(Point.AGE)).isEqualTo(new Answer.Known("6 months", "birth date and show date"));
        assertThat(findings.answer(Point.FUR)).isEqualTo(new Answer.Known("flyback", "breed table"));
        assertThat(findings.answer(Point.EYE)).isEqualTo(new Answer.Known("brown", "colour table"));
        assertThat(findings.answer(Point.EAR_NUMBER)).isEqualTo(new Answer.Known("0042", "the club’s list"));
        assertThat(findings.answer(Point.NAILS))
                .isEqualTo(new Answer.Check("nail colour", "a marked breed has a rule of its own"));
        assertThat(demo("Cocoa", Level.JUNIOR).answer(Point.EYE))
                .isEqualTo(new Answer.Known("brown", "colour table: ruby cast allowed"));
    }

    @Test
    void cardsAskOneFactEachAndKeepTheirCodes() {
        assertThat(OwnCards.of(demo("Domino", Level.JUNIOR), Level.JUNIOR, Samples.LIBRARY))
                .extracting(card -> card.code().toString(), OwnWordsTest::question, OwnWordsTest::answer)
                .containsExactly(
                        tuple("20.1", "How old is Domino on show day?", "6 months."),
                        tuple(
                                "20.2",
                                "Which class is Domino in on show day?",
                                "Senior buck: its breed has four classes, and it is 6 months old."),
                        tuple("20.3", "What colour should Domino’s eyes be?", "Brown."),
                        tuple(
                                "20.4",
                                "Which pose belongs to a Dutch?",
                                "Its front feet are under its eyes and its hind toes in line with"
                                        + " the front of the hip. Its head is low, and I do not press it."),
                        tuple("20.5", "Which body type belongs to a Dutch?", "Compact: it is short, round and wide."),
                        tuple("20.6", "Which fur type should Domino have?", "Flyback."),
                        tuple("20.8", "What is the number in Domino’s ear?", "0042."),
                        tuple(
                                "20.9",
                                "What colour should Domino’s nails be?",
                                "Check your breed standard, then write it here: {rabbit.nail colour}"),
                        tuple("20.11", "What is Domino’s variety called?", "Black."));
    }

    @Test
    void theSameFactHasTheSameCodeAtEveryLevel() {
        assertThat(OwnCards.of(demo("Domino", Level.PRIMARY), Level.PRIMARY, Samples.LIBRARY))
                .extracting(card -> card.code().toString(), OwnWordsTest::question, OwnWordsTest::answer)
                .containsExactly(
                        tuple("20.1", "How old is Domino on show day?", "6 months."),
                        tuple("20.3", "What colour should Domino’s eyes be?", "Brown."),
                        tuple("20.7", "You stroke Domino’s fur up. What should it do?", "It snaps back at once."),
                        tuple("20.8", "What is the number in Domino’s ear?", "0042."),
                        tuple("20.10", "Is Domino a buck or a doe?", "A buck: a boy."),
                        tuple("20.15", "What breed is Domino?", "A Dutch."));
    }

    @Test
    void theBodyTypeCardShowsTheOutlineOfItsPose() {
        assertThat(figure("Dutch")).isEqualTo("figures/body-compact.svg");
        assertThat(figure("Lionhead")).isEqualTo("figures/body-compact-head-up.svg");
        assertThat(figure("Flemish Giant")).isEqualTo("figures/body-semi-arch.svg");
        assertThat(figure("Himalayan")).isEqualTo("figures/body-cylindrical.svg");
        // No figure shows ears that lop, or a full-arch breed as it runs.
        assertThat(figure("Holland Lop")).isEqualTo("none");
        assertThat(figure("Tan")).isEqualTo("none");
    }

    private static String figure(String breed) {
        Findings findings = RabbitEngine.of(
                Samples.rabbit(breed, "black", Sex.DOE, Samples.SHOW.minusMonths(9)), Samples.SHOW, Level.SENIOR);
        return OwnCards.of(findings, Level.SENIOR, Samples.LIBRARY).stream()
                .flatMap(card -> card.picture().stream())
                .map(Block.Picture::file)
                .findFirst()
                .orElse("none");
    }

    @Test
    void aCardForAnyRabbitIsALineToWriteOn() {
        assertThat(OwnCards.of(RabbitEngine.unknown(Samples.SHOW, Level.PRIMARY), Level.PRIMARY, Samples.LIBRARY))
                .extracting(OwnWordsTest::question, OwnWordsTest::answer)
                .contains(
                        tuple(
                                "How old is your rabbit on show day?",
                                "Ask a grown-up, then write it here: {rabbit.age}"),
                        tuple(
                                "What colour should your rabbit’s eyes be?",
                                "Ask a grown-up, then write it here: {rabbit.eye colour}"));
    }

    @Test
    void aCardSendsOlderMembersToTheBreedStandard() {
        assertThat(OwnCards.of(RabbitEngine.unknown(Samples.SHOW, Level.SENIOR), Level.SENIOR, Samples.LIBRARY))
                .extracting(OwnWordsTest::question, OwnWordsTest::answer)
                .contains(
                        tuple("How old is your rabbit on show day?", "Find out, then write it here: {rabbit.age}"),
                        tuple(
                                "What may a senior of your rabbit’s breed weigh?",
                                "Check your breed standard, then write it here: {rabbit.senior weight}"));
    }

    @Test
    void questionsHaveTheirPointsFilledIn() {
        List<JudgeQuestion> questions = OwnQuestions.of(demo("Ember", Level.JUNIOR), Level.JUNIOR);

        assertThat(questions.get(1).question().plain()).isEqualTo("Which show class is your rabbit in, and why?");
        assertThat(questions.get(1).points().stream().map(Words::plain))
                .containsExactly("show class: junior buck", "age on show day: 5 months", "classes of its breed: four");
        assertThat(questions.get(3).points().stream().map(Words::plain))
                .containsExactly("eye colour: brown", "nail colour: {rabbit.nail colour}");
    }

    @Test
    void commentsFollowTheBodyAndTheFur() {
        assertThat(Comments.of(demo("Frost", Level.JUNIOR), Level.JUNIOR))
                .containsExactly(
                        new Build("back", "flat and level", "a rise over the hips", "The back is …, because …"),
                        new Build(
                                "hips",
                                "as wide as the shoulders",
                                "wider than the shoulders",
                                "The hips are …, because …"),
                        new Build("fur", "snaps back and shines", "slow or dull", "The fur is …, because …"));
        assertThat(Comments.of(demo("Button", Level.PRIMARY), Level.PRIMARY))
                .containsExactly(
                        new Tick("I like its shape, because it is short and round."),
                        new Tick("I like its fur, because it is clean and smooth."));
        assertThat(Comments.of(demo("Comet", Level.SENIOR), Level.SENIOR))
                .extracting(comment -> ((Build) comment).part())
                .containsExactly("head and ears", "shoulders", "back", "hindquarters", "fur");
    }

    private static String question(Card card) {
        return card.question().plain();
    }

    private static String answer(Card card) {
        return card.answer().plain();
    }
}
