package hutchleaf.rabbit;

import hutchleaf.model.Breed;
import hutchleaf.model.Inline;
import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import hutchleaf.model.Words;
import hutchleaf.rabbit.Answer.Known;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A fact about a rabbit that a card asks for. Numbers are fixed, so that a card keeps its code; a new fact takes the next. */
enum OwnFact {
    AGE(1, Point.AGE),
    SHOW_CLASS(2, Point.SHOW_CLASS),
    EYE(3, Point.EYE),
    POSE(4, Point.POSE),
    BODY_TYPE(5, Point.BODY_TYPE),
    FUR(6, Point.FUR),
    FUR_TEST(7, Point.FUR_TEST),
    EAR_NUMBER(8, Point.EAR_NUMBER),
    NAILS(9, Point.NAILS),
    SEX(10, Point.SEX),
    VARIETY(11, Point.VARIETY),
    COLOUR_GROUP(12, Point.COLOUR_GROUP),
    SENIOR_WEIGHT(13, Point.WEIGHT_CLASS),
    JUDGES_LOOK_FOR(14, Point.JUDGES_LOOK_FOR),
    BREED(15, Point.BREED);

    private static final List<OwnFact> PRIMARY = List.of(BREED, AGE, SEX, EYE, EAR_NUMBER, FUR_TEST);
    private static final List<OwnFact> JUNIOR =
            List.of(AGE, SHOW_CLASS, EYE, POSE, BODY_TYPE, FUR, EAR_NUMBER, NAILS, VARIETY);
    private static final List<OwnFact> OLDER = List.of(
            AGE,
            SHOW_CLASS,
            EYE,
            POSE,
            BODY_TYPE,
            FUR,
            FUR_TEST,
            NAILS,
            VARIETY,
            COLOUR_GROUP,
            SENIOR_WEIGHT,
            JUDGES_LOOK_FOR);

    /** What cannot be asked of a mixed breed. */
    private static final List<OwnFact> OF_A_BREED = List.of(SENIOR_WEIGHT, JUDGES_LOOK_FOR);

    private final int number;
    private final Point point;

    OwnFact(int number, Point point) {
        this.number = number;
        this.point = point;
    }

    /** The facts of a level, in the order of their codes; two fewer for a mixed breed at the older levels. */
    static List<OwnFact> of(Findings findings, Level level) {
        List<OwnFact> facts = switch (level) {
            case PRIMARY -> PRIMARY;
            case JUNIOR -> JUNIOR;
            case INTERMEDIATE, SENIOR -> OLDER;
        };
        return Arrays.stream(values())
                .filter(facts::contains)
                .filter(fact -> !Lines.mixed(findings.rabbit()) || !OF_A_BREED.contains(fact))
                .toList();
    }

    int number() {
        return number;
    }

    String question(Findings findings, Level level) {
        String name = findings.name();
        String kind = findings.kind();
        return switch (this) {
            case AGE -> "How old is " + name + " on show day?";
            case SHOW_CLASS ->
                Lines.mixed(findings.rabbit())
                        ? "Which show class may take " + name + ", a mixed breed?"
                        : "Which class is " + name + " in on show day?";
            case EYE -> "What colour should " + name + "’s eyes be?";
            case POSE -> "Which pose belongs to " + kind + "?";
            case BODY_TYPE ->
                level == Level.PRIMARY ? "What shape is " + kind + "?" : "Which body type belongs to " + kind + "?";
            case FUR -> "Which fur type should " + name + " have?";
            case FUR_TEST ->
                wool(findings)
                        ? "You part " + name + "’s wool gently. What should it be like?"
                        : "You stroke " + name + "’s fur up. What should it do?";
            case EAR_NUMBER -> "What is the number in " + name + "’s ear?";
            case NAILS -> "What colour should " + name + "’s nails be?";
            case SEX -> "Is " + name + " a buck or a doe?";
            case VARIETY -> "What is " + name + "’s variety called?";
            case COLOUR_GROUP -> "Which colour group is " + name + "’s variety in?";
            case SENIOR_WEIGHT -> "What may " + senior(findings) + " weigh?";
            case JUDGES_LOOK_FOR -> "What do judges look for in " + kind + "?";
            case BREED -> "What breed is " + name + "?";
        };
    }

    private static boolean wool(Findings findings) {
        return findings.rabbit()
                .flatMap(Rabbit::breed)
                .flatMap(BreedPoints::fur)
                .filter(fur -> fur == Fur.WOOL)
                .isPresent();
    }

    private static String senior(Findings findings) {
        return findings.rabbit()
                .flatMap(own -> own.breed()
                        .map(breed ->
                                "a senior " + breed.name() + " " + own.sex().word()))
                .orElse("a senior of " + findings.name() + "’s breed");
    }

    Words answer(Findings findings, Level level) {
        return told(findings, level)
                .map(words -> Words.of(Spoken.sentence(words)))
                .orElseGet(() -> new Words(List.of(
                        new Inline.Text(whereToLook(findings, level) + ", then write it here: "),
                        new Inline.Blank(this == SENIOR_WEIGHT ? "rabbit.senior weight" : point.blank()))));
    }

    private String whereToLook(Findings findings, Level level) {
        if (level == Level.PRIMARY) {
            return "Ask a grown-up";
        }
        return switch (this) {
            case AGE, SEX, EAR_NUMBER, BREED -> "Find out";
            case SHOW_CLASS,
                    EYE,
                    POSE,
                    BODY_TYPE,
                    FUR,
                    FUR_TEST,
                    NAILS,
                    VARIETY,
                    COLOUR_GROUP,
                    SENIOR_WEIGHT,
                    JUDGES_LOOK_FOR ->
                findings.rabbit().filter(own -> own.breed().isEmpty()).isPresent()
                        ? "Look at your rabbit, or ask your leader"
                        : "Check your breed standard";
        };
    }

    /** The answer, when it is known; a card on the senior weight does not ask what this rabbit weighs. */
    private Optional<String> told(Findings findings, Level level) {
        if (this == SENIOR_WEIGHT) {
            return findings.rabbit()
                    .flatMap(own -> own.breed().flatMap(breed -> Limits.senior(breed, own.sex())))
                    .map(Limits::printed);
        }
        if (this == SHOW_CLASS && Lines.mixed(findings.rabbit())) {
            return Optional.of("often showmanship, where the member is judged: check the rule book");
        }
        return findings.answer(point) instanceof Known known
                ? findings.rabbit().map(own -> told(known.words(), own, findings, level))
                : Optional.empty();
    }

    private String told(String words, Rabbit own, Findings findings, Level level) {
        Optional<Breed> breed = own.breed();
        return switch (this) {
            case SHOW_CLASS ->
                words + ": its breed has " + breed.map(ShowClass::count).orElse("") + " classes, and it is "
                        + findings.words(Point.AGE).orElse("") + " old";
            case BODY_TYPE ->
                words + ": " + breed.flatMap(BreedPoints::shape).orElseThrow().seen(level);
            case POSE -> breed.flatMap(BreedPoints::pose).orElseThrow().told(level);
            case NAILS -> words + ", and they match";
            case SEX -> "a " + words + ": a " + (own.sex() == Sex.BUCK ? "boy" : "girl");
            case BREED -> breed.isPresent() ? Spoken.breed(own) : words;
            case AGE, EYE, FUR, FUR_TEST, EAR_NUMBER, VARIETY, COLOUR_GROUP, SENIOR_WEIGHT, JUDGES_LOOK_FOR -> words;
        };
    }
}
