package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import hutchleaf.rabbit.Findings.Line;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a member of a level shows and says, point by point. */
final class Lines {
    private static final Set<Point> PRIMARY = EnumSet.of(
            Point.BODY_TYPE,
            Point.POSE,
            Point.BREED,
            Point.SEX,
            Point.AGE,
            Point.EARS,
            Point.EAR_NUMBER,
            Point.EYE,
            Point.FUR,
            Point.FUR_TEST);
    private static final Set<Point> FROM_INTERMEDIATE =
            EnumSet.of(Point.WEIGHT_CLASS, Point.COLOUR_GROUP, Point.JUDGES_LOOK_FOR);

    /** What only a breed has. */
    private static final Set<Point> OF_A_BREED = EnumSet.of(Point.WEIGHT_CLASS, Point.JUDGES_LOOK_FOR);

    private final Optional<Rabbit> rabbit;
    private final LocalDate show;
    private final Level level;

    private Lines(Optional<Rabbit> rabbit, LocalDate show, Level level) {
        this.rabbit = rabbit;
        this.show = show;
        this.level = level;
    }

    /** The lines of a level, in the order of the routine. */
    static List<Line> of(Optional<Rabbit> rabbit, LocalDate show, Level level, Map<Point, Answer> answers) {
        Lines lines = new Lines(rabbit, show, level);
        return answers.entrySet().stream()
                .filter(entry -> reaches(entry.getKey(), level))
                .filter(entry -> !mixed(rabbit) || !OF_A_BREED.contains(entry.getKey()))
                .map(entry -> new Line(
                        entry.getKey().stop(),
                        entry.getKey(),
                        entry.getValue(),
                        lines.say(entry.getKey(), entry.getValue())))
                .toList();
    }

    /** Whether it is a rabbit of mixed breed. */
    static boolean mixed(Optional<Rabbit> rabbit) {
        return rabbit.filter(own -> own.breed().isEmpty()).isPresent();
    }

    private static boolean reaches(Point point, Level level) {
        return switch (level) {
            case PRIMARY -> PRIMARY.contains(point);
            case JUNIOR -> !FROM_INTERMEDIATE.contains(point);
            case INTERMEDIATE, SENIOR -> true;
        };
    }

    private String say(Point point, Answer answer) {
        if (answer instanceof Answer.Known known && rabbit.isPresent()) {
            return level == Level.PRIMARY
                    ? simple(point, known.words(), rabbit.get())
                    : full(point, known.words(), rabbit.get());
        }
        return toFinish(point);
    }

    /** A sentence that the member finishes. */
    private String toFinish(Point point) {
        if (point == Point.SHOW_CLASS && mixed(rabbit)) {
            return "It is of mixed breed, so it has no breed class.";
        }
        return switch (point) {
            case BODY_TYPE -> level == Level.PRIMARY ? "Its shape is …" : "Its body type is …";
            case POSE -> "I show it …";
            case BREED -> level == Level.PRIMARY ? "My rabbit is a …" : "The breed is …";
            case VARIETY -> "The variety is …";
            case SEX, SEX_CHECK -> "It is a …";
            case AGE -> "It is … old.";
            case SHOW_CLASS -> "Its show class is …";
            case WEIGHT -> "It weighs …";
            case WEIGHT_CLASS -> "The weight limits of its class are …";
            case EARS -> "Its ears are …";
            case EAR_NUMBER -> "The ear number is …";
            case EYE -> "Its eyes are …";
            case NAILS -> "Its nails are …";
            case FUR -> "The fur type is …";
            case FUR_TEST -> "I stroke it up, and it …";
            case COLOUR_GROUP -> "Its colour group is …";
            case JUDGES_LOOK_FOR -> "In this breed, judges look for …";
        };
    }

    /** A sentence for the youngest. */
    private String simple(Point point, String words, Rabbit own) {
        return switch (point) {
            case BODY_TYPE -> "Its shape is " + words + ": " + seen(own) + ".";
            case BREED -> "My rabbit is " + Spoken.breed(own) + ".";
            case SEX -> "It is a " + words + ", a " + (own.sex() == Sex.BUCK ? "boy" : "girl") + ".";
            case EARS -> words.equals("lop") ? "Its ears hang down." : "Its ears stand up.";
            case EYE -> "Its eyes are " + words + ".";
            case FUR -> "Its fur is " + words + ".";
            case FUR_TEST -> shown(own);
            case VARIETY,
                    POSE,
                    AGE,
                    SHOW_CLASS,
                    WEIGHT,
                    WEIGHT_CLASS,
                    EAR_NUMBER,
                    NAILS,
                    SEX_CHECK,
                    COLOUR_GROUP,
                    JUDGES_LOOK_FOR -> full(point, words, own);
        };
    }

    private String full(Point point, String words, Rabbit own) {
        boolean older = level.compareTo(Level.JUNIOR) > 0;
        return switch (point) {
            case BODY_TYPE -> "Its body type is " + words + ": " + seen(own) + ".";
            case POSE -> own.breed().flatMap(BreedPoints::pose).orElseThrow().told(level);
            case BREED -> own.breed().isPresent() ? "The breed is " + words + "." : "It is of mixed breed.";
            case VARIETY -> "The variety is " + words + ".";
            case SEX -> "It is a " + words + ".";
            case AGE -> "It is " + words + " old.";
            case SHOW_CLASS -> showClass(words, own, older);
            case WEIGHT -> "It weighs " + words + ".";
            case WEIGHT_CLASS -> weightClass(own);
            case EARS ->
                older
                        ? "The ear carriage is " + words + ", as the breed should be."
                        : "Its ears are " + words + ": they " + (words.equals("lop") ? "hang down." : "stand up.");
            case EAR_NUMBER ->
                older ? "The number in its left ear is " + words + "." : "The ear number is " + words + ".";
            case EYE -> older ? "Both eyes are " + words + ", as they should be." : "Both eyes are " + words + ".";
            case NAILS ->
                older
                        ? "All its nails are " + words + ", and they match."
                        : "Its nails are " + words + ", and they match.";
            case SEX_CHECK -> SexCheck.say(own, show, level);
            case FUR -> "The fur type is " + words + ".";
            case FUR_TEST -> shown(own);
            case COLOUR_GROUP -> "Its variety belongs to the group called " + words + ".";
            case JUDGES_LOOK_FOR -> "In " + Spoken.breed(own) + ", judges look for " + words + ".";
        };
    }

    private static String showClass(String words, Rabbit own, boolean older) {
        String classes = own.breed().map(ShowClass::count).orElse("");
        return older
                ? "Its show class is " + words + ", by its age: its breed has " + classes + " classes."
                : "Its show class is " + words + ".";
    }

    /** Known only for a senior that was weighed and whose limits are known. */
    private static String weightClass(Rabbit own) {
        Limits limits =
                own.breed().flatMap(breed -> Limits.senior(breed, own.sex())).orElseThrow();
        String named = "the limits for a senior " + own.sex().word() + ": " + limits.printed() + ".";
        return switch (limits.side(own.weight().orElseThrow())) {
            case WITHIN -> "Its weight is within " + named;
            case OVER -> "Its weight is over " + named + " I have told my leader.";
            case UNDER -> "Its weight is under " + named + " I have told my leader.";
        };
    }

    private String shown(Rabbit own) {
        return own.breed().flatMap(BreedPoints::fur).orElseThrow().shown(level);
    }

    /** What is seen of its body type; known wherever the body type is. */
    private String seen(Rabbit own) {
        return own.breed().flatMap(BreedPoints::shape).orElseThrow().seen(level);
    }
}
