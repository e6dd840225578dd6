package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import hutchleaf.rabbit.Answer.Known;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What is said at the sex stop. From intermediate a buck's testicles are named: both are down from 6 months, and in the
 * junior class both or none. Sources: S81 and S82 of {@code sources.md}.
 */
final class SexCheck {
    private static final String BOTH = "both testicles are down";

    private SexCheck() {}

    static Known answer(Rabbit rabbit, LocalDate show, Level level) {
        boolean young = young(rabbit, show);
        return added(rabbit, show, level).isEmpty()
                ? new Known(rabbit.sex().word(), RabbitEngine.LIST)
                : new Known(
                        young ? BOTH + ", or none is" : BOTH,
                        young ? "rule for bucks under 6 months" : "rule for bucks of 6 months and over");
    }

    /** The words to say. */
    static String say(Rabbit rabbit, LocalDate show, Level level) {
        String sex = "It is a " + rabbit.sex().word() + ".";
        return added(rabbit, show, level).map(words -> sex + " " + words).orElse(sex);
    }

    /** What an older member adds of a buck; the member reads out what is true of it. */
    static Optional<String> added(Rabbit rabbit, LocalDate show, Level level) {
        if (rabbit.sex() == Sex.DOE || level.compareTo(Level.INTERMEDIATE) < 0) {
            return Optional.empty();
        }
        if (!young(rabbit, show)) {
            return Optional.of(Spoken.sentence(BOTH));
        }
        String why = rabbit.breed().isPresent() ? "as a junior class allows" : "and it is under 6 months old";
        return Optional.of(Spoken.sentence(BOTH) + " (Or: none is down yet, " + why + ".)");
    }

    private static boolean young(Rabbit rabbit, LocalDate show) {
        return new Age(rabbit.born(), show).months() < ShowClass.JUNIOR_UNTIL;
    }
}
