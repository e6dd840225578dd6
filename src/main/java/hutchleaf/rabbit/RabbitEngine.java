package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.rabbit.Answer.Check;
import hutchleaf.rabbit.Answer.Known;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Works out what a judge should find on a rabbit. The tables and the dates answer; what they do not know is to be checked. */
public final class RabbitEngine {
    /** What stands behind a name, a sex, an ear number or a weight. */
    static final String LIST = "the club’s list";

    private RabbitEngine() {}

    /** What is to be found on the rabbit on the show day, in the words of the level. */
    public static Findings of(Rabbit rabbit, LocalDate show, Level level) {
        Map<Point, Answer> answers = new EnumMap<>(Point.class);
        new BreedPoints(rabbit, show, level).addTo(answers);
        new CoatPoints(rabbit, level).addTo(answers);
        answers.put(Point.BREED, new Known(rabbit.breedName(), LIST));
        answers.put(Point.SEX, new Known(rabbit.sex().word(), LIST));
        answers.put(Point.SEX_CHECK, SexCheck.answer(rabbit, show, level));
        answers.put(Point.AGE, age(new Age(rabbit.born(), show)));
        answers.put(
                Point.EAR_NUMBER,
                rabbit.earNumber().isBlank()
                        ? new Check(Point.EAR_NUMBER.ask(), "no number in " + LIST)
                        : new Known(rabbit.earNumber(), LIST));
        answers.put(
                Point.WEIGHT,
                rabbit.weight()
                        .<Answer>map(weight -> new Known(weight.asWritten(), LIST))
                        .orElseGet(() -> new Check(Point.WEIGHT.ask(), "no weight in " + LIST)));
        return new Findings(Optional.of(rabbit), show, answers, Lines.of(Optional.of(rabbit), show, level, answers));
    }

    /** A page for any rabbit: all is to be checked and written in. */
    public static Findings unknown(LocalDate show, Level level) {
        Map<Point, Answer> answers = new EnumMap<>(Point.class);
        for (Point point : Point.values()) {
            answers.put(point, new Check(point.ask(), "a page for any rabbit"));
        }
        return new Findings(Optional.empty(), show, answers, Lines.of(Optional.empty(), show, level, answers));
    }

    private static Answer age(Age age) {
        return age.known()
                ? new Known(age.words(), "birth date and show date")
                : new Check(Point.AGE.ask(), "its birth date lies after the show");
    }
}
