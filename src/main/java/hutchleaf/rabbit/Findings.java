package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What is to be found on a rabbit on the show day, and how a member of one level says it.
 *
 * @param rabbit empty for a packet that serves any rabbit
 * @param answers one for every point
 * @param lines what the level shows and says, in the order of the routine
 */
public record Findings(Optional<Rabbit> rabbit, LocalDate show, Map<Point, Answer> answers, List<Line> lines) {
    /**
     * A row of "my rabbit's page".
     *
     * @param stop at which it is shown or said, 1 to 16
     * @param say the words to say aloud; "…" stands where the member finishes a sentence
     */
    public record Line(int stop, Point point, Answer answer, String say) {}

    public Findings {
        answers = Collections.unmodifiableMap(new EnumMap<>(answers));
        lines = List.copyOf(lines);
        for (Point point : Point.values()) {
            if (!answers.containsKey(point)) {
                throw new IllegalArgumentException("no answer for " + point);
            }
        }
    }

    public Answer answer(Point point) {
        return Objects.requireNonNull(answers.get(point), point::name);
    }

    /** The words that fill a blank such as {@code rabbit.eye colour}; empty where they are not known. */
    public Optional<String> filling(String blank) {
        if (blank.equals("rabbit.name")) {
            return rabbit.map(Rabbit::name);
        }
        String asked = blank.equals("rabbit.colour") ? Point.VARIETY.blank() : blank;
        return Arrays.stream(Point.values())
                .filter(point -> point.blank().equals(asked))
                .findFirst()
                .flatMap(this::words);
    }

    /** What a leader and a member should know when the rabbit changes its class within a week of the show. */
    public Optional<String> classNote() {
        return rabbit.flatMap(own -> ShowClass.note(own, show));
    }

    /**
     * A script of the routine, its blanks filled, as it is said of this rabbit: at the sex stop only what fits a buck or
     * a doe of its age stays, and a rabbit of mixed breed is not held to a breed. A script for any rabbit stays as it is.
     *
     * @param stop 1 to 16
     */
    public String forRabbit(int stop, Level level, String sayIt) {
        return rabbit.map(own -> Scripts.fitted(own, show, stop, level, sayIt)).orElse(sayIt);
    }

    /** The rabbit's name, or "your rabbit" where any rabbit is meant. */
    String name() {
        return rabbit.map(Rabbit::name).orElse("your rabbit");
    }

    /** Its breed with an article, {@code a Dutch}; where it has none or it is not known, its name. */
    String kind() {
        return rabbit.flatMap(Rabbit::breed)
                .map(breed -> Spoken.article(breed.name()))
                .orElseGet(this::name);
    }

    /** The words of a point, when they are known. */
    Optional<String> words(Point point) {
        return answer(point) instanceof Answer.Known known ? Optional.of(known.words()) : Optional.empty();
    }
}
