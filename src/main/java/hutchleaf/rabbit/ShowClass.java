package hutchleaf.rabbit;

import hutchleaf.model.Breed;
import hutchleaf.model.Rabbit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;

/**
 * The age classes of a breed show. A junior is under 6 months; a breed of four classes has seniors from 6 months, one of
 * six has intermediates from 6 to 8 months and seniors from 8. Source: uf-class of {@code sources.md}.
 */
enum ShowClass {
    JUNIOR,
    INTERMEDIATE,
    SENIOR;

    static final int JUNIOR_UNTIL = 6;
    static final int SIX_CLASS_SENIOR_FROM = 8;
    private static final int FOUR = 4;

    /** Own rule: how near to the edge of a class a member is told of it. */
    private static final int EDGE_DAYS = 7;

    /** The class at an age in whole months. */
    static ShowClass at(int classes, long months) {
        if (months < JUNIOR_UNTIL) {
            return JUNIOR;
        }
        return classes == FOUR || months >= SIX_CLASS_SENIOR_FROM ? SENIOR : INTERMEDIATE;
    }

    /** The class of a rabbit, when its breed and its age tell it. */
    static Optional<ShowClass> of(Rabbit rabbit, LocalDate show) {
        Age age = new Age(rabbit.born(), show);
        return rabbit.breed()
                .filter(breed -> breed.basis().sure("classes") && age.known())
                .map(breed -> at(breed.classes(), age.months()));
    }

    /** {@code four} or {@code six}. */
    static String count(Breed breed) {
        return breed.classes() == FOUR ? "four" : "six";
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What to know when the rabbit changes its class within a week of the show; the wording at the edge differs. */
    static Optional<String> note(Rabbit rabbit, LocalDate show) {
        Age age = new Age(rabbit.born(), show);
        return of(rabbit, show)
                .flatMap(now -> Optional.of(JUNIOR_UNTIL)
                        .filter(months -> near(age, months))
                        .or(() -> Optional.of(SIX_CLASS_SENIOR_FROM)
                                .filter(months -> rabbit.breed().orElseThrow().classes() != FOUR && near(age, months)))
                        .map(months -> note(age, months)));
    }

    private static boolean near(Age age, int months) {
        return Math.abs(ChronoUnit.DAYS.between(age.day(), age.turns(months))) <= EDGE_DAYS;
    }

    private static String note(Age age, int months) {
        LocalDate turns = age.turns(months);
        long days = ChronoUnit.DAYS.between(age.day(), turns);
        if (days == 0) {
            return "It turns " + months + " months old on the show day itself. We count that day as the older class:"
                    + " ask the show before you enter.";
        }
        return days > 0
                ? "It turns " + months + " months old on " + Age.printed(turns) + ", " + Age.count(days, "day")
                        + " after the show. If the show day moves, look at its class again."
                : "It turned " + months + " months old on " + Age.printed(turns) + ", " + Age.count(-days, "day")
                        + " before the show. Enter it in the class of the show day.";
    }
}
