package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;
import java.util.stream.Stream;

/** One question of the self-test. Each gives the reason that the key prints. */
public sealed interface SelfTestItem {
    Words question();

    Levels levels();

    Place at();

    Words why();

    /** Every line of words in the item. */
    default Stream<Words> words() {
        List<Words> inside = List.of();
        if (this instanceof TickOne tick) {
            inside = tick.choices();
        } else if (this instanceof Gap gap) {
            inside = List.of(gap.answer());
        } else if (this instanceof Aloud aloud) {
            inside = aloud.points();
        }
        return Stream.concat(Stream.of(question(), why()), inside.stream());
    }

    /**
     * A question with choices.
     *
     * @param right index of the right choice, from 0
     */
    record TickOne(Words question, Levels levels, Place at, List<Words> choices, int right, Words why)
            implements SelfTestItem {
        public TickOne {
            choices = List.copyOf(choices);
        }
    }

    /** A sentence to finish; the question holds {@link #GAP} where the writing line goes. */
    record Gap(Words question, Levels levels, Place at, Words answer, Words why) implements SelfTestItem {
        /** What an author types where the writing line goes. */
        public static final String GAP = "___";
    }

    /** Something to show and say while a friend ticks what they hear. */
    record Aloud(Words question, Levels levels, Place at, List<Words> points, Words why) implements SelfTestItem {
        public Aloud {
            points = List.copyOf(points);
        }
    }
}
