package hutchleaf.rabbit;

import hutchleaf.model.Breed;
import hutchleaf.model.Sex;
import hutchleaf.model.Weight;
import hutchleaf.model.WeightUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a senior of a breed weighs, in pounds.
 *
 * @param least empty where the breed has no least weight
 * @param most empty where it has no top weight
 * @param printed with its unit: {@code 3.5 to 5.5 lb}
 */
record Limits(OptionalDouble least, OptionalDouble most, String printed) {
    private static final String NUMBER = "\\d+(?:\\.\\d+)?";
    private static final Pattern FORM = Pattern.compile("(?<from>" + NUMBER + ") to (?<to>" + NUMBER
            + ")|up to (?<most>" + NUMBER + ")|(?<least>" + NUMBER + ") and over");

    /** A scale in kilograms may differ by this much in the last place, in pounds. */
    private static final double ROUNDING = 0.005;

    /** Which side of the limits a weight lies on. */
    enum Side {
        UNDER,
        WITHIN,
        OVER
    }

    /** The limits of a breed's senior bucks or does; empty where the table has none or is not sure. */
    static Optional<Limits> senior(Breed breed, Sex sex) {
        boolean buck = sex == Sex.BUCK;
        return breed.basis().sure(buck ? "senior buck" : "senior doe")
                ? read(
                        buck ? breed.weights().buck() : breed.weights().doe(),
                        breed.weights().unit())
                : Optional.empty();
    }

    /** Limits that are printed in pounds. */
    static Optional<Limits> read(String cell) {
        return read(cell, WeightUnit.LB);
    }

    private static Optional<Limits> read(String cell, WeightUnit unit) {
        Matcher form = FORM.matcher(cell);
        if (!form.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Limits(
                number(form.group("from"), form.group("least")),
                number(form.group("to"), form.group("most")),
                unit.limits(cell)));
    }

    Side side(Weight weight) {
        if (least.isPresent() && weight.pounds() < least.getAsDouble() - ROUNDING) {
            return Side.UNDER;
        }
        return most.isPresent() && weight.pounds() > most.getAsDouble() + ROUNDING ? Side.OVER : Side.WITHIN;
    }

    private static OptionalDouble number(@Nullable String one, @Nullable String other) {
        if (one != null) {
            return OptionalDouble.of(Double.parseDouble(one));
        }
        return other == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(other));
    }
}
