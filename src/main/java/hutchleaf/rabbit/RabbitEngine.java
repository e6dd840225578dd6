package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Works out what a judge should find on a rabbit. The tables and the dates answer; what they do not know is to be checked. */
public final class RabbitEngine {
    private RabbitEngine() {}

    /** What is to be found on the rabbit on the show day, in the words of the level. */
    public static Findings of(Rabbit rabbit, LocalDate show, Level level) {
        return unknown(show, level);
    }

    /** A page for any rabbit: all is to be checked and written in. */
    public static Findings unknown(LocalDate show, Level level) {
        Map<Point, Answer> answers = new EnumMap<>(Point.class);
        List<Findings.Line> lines = new ArrayList<>();
        for (Point point : Point.values()) {
            Answer answer = new Answer.Check(point.label().toLowerCase(Locale.ROOT), "any rabbit");
            answers.put(point, answer);
            lines.add(new Findings.Line(point.stop(), point, answer, point.label() + ": …"));
        }
        return new Findings(Optional.empty(), show, answers, lines);
    }
}
