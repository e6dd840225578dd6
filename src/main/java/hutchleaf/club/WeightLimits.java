package hutchleaf.club;

import hutchleaf.model.Breed;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The limits of a breed for seniors, in pounds, from a cell of the breed table: {@code 3.5 to 5.5}, {@code up to 4},
 * {@code 10 and over}.
 */
record WeightLimits(double least, double most) {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern BETWEEN = Pattern.compile(NUMBER + " to " + NUMBER);
    private static final Pattern UP_TO = Pattern.compile("up to " + NUMBER);
    private static final Pattern OVER = Pattern.compile(NUMBER + " and over");

    /** A breed of four classes has seniors from 6 months, one of six from 8; source: uf-class of {@code sources.md}. */
    private static final int FOUR_CLASS_SENIOR = 6;

    private static final int SIX_CLASS_SENIOR = 8;
    private static final int FOUR = 4;

    /** What is lost when kilograms are turned into pounds and back, in pounds. */
    private static final double TOLERANCE = 0.005;

    static Optional<WeightLimits> parse(String cell) {
        Matcher between = BETWEEN.matcher(cell);
        if (between.matches()) {
            return Optional.of(new WeightLimits(number(between, 1), number(between, 2)));
        }
        Matcher upTo = UP_TO.matcher(cell);
        if (upTo.matches()) {
            return Optional.of(new WeightLimits(0, number(upTo, 1)));
        }
        Matcher over = OVER.matcher(cell);
        return over.matches()
                ? Optional.of(new WeightLimits(number(over, 1), Double.POSITIVE_INFINITY))
                : Optional.empty();
    }

    /** Warns of a senior whose weight is outside the limits, where the table is sure of them. */
    static void check(Rabbit rabbit, LocalDate show, Cells cells) {
        rabbit.weight()
                .ifPresent(weight -> rabbit.breed()
                        .filter(breed -> ChronoUnit.MONTHS.between(rabbit.born(), show) >= seniorFrom(breed))
                        .filter(breed -> breed.basis().sure(column(rabbit.sex())))
                        .ifPresent(breed -> parse(cell(breed, rabbit.sex()))
                                .filter(limits -> !limits.hold(weight.pounds()))
                                .ifPresent(limits -> cells.warn(
                                        "'" + rabbit.name() + "' weighs " + weight.asWritten()
                                                + ", outside the limits of a senior "
                                                + rabbit.sex().word() + " of the " + breed.name() + " ("
                                                + cell(breed, rabbit.sex()) + ", in pounds)",
                                        "weigh it again and ask before you enter it in a breed class"))));
    }

    private boolean hold(double pounds) {
        return pounds >= least - TOLERANCE && pounds <= most + TOLERANCE;
    }

    /** In whole months; the later age where the table is not sure of the classes. */
    private static int seniorFrom(Breed breed) {
        return breed.classes() == FOUR && breed.basis().sure("classes") ? FOUR_CLASS_SENIOR : SIX_CLASS_SENIOR;
    }

    private static String column(Sex sex) {
        return "senior " + sex.word();
    }

    private static String cell(Breed breed, Sex sex) {
        return sex == Sex.BUCK ? breed.weights().buck() : breed.weights().doe();
    }

    private static double number(Matcher found, int group) {
        return Double.parseDouble(found.group(group));
    }
}
