package hutchleaf.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** In which unit weights are printed; what the breed table gives in pounds is turned into it. */
public enum WeightUnit {
    LB("lb"),
    KG("kg");

    /** The international pound of 1959, exact. */
    private static final BigDecimal KILOGRAMS_A_POUND = new BigDecimal("0.45359237");

    /** Places behind the point: 0.01 kg is a third of an ounce, finer than any scale on a show table. */
    private static final int PLACES = 2;

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    private final String sign;

    WeightUnit(String sign) {
        this.sign = sign;
    }

    /** The unit as it is printed: {@code kg}. */
    public String sign() {
        return sign;
    }

    /**
     * Limits of the breed table.
     *
     * @param pounds as the table gives them: {@code 3.5 to 5.5}, {@code up to 2.5} or {@code 9 and over}
     * @return with the unit: {@code 3.5 to 5.5 lb}, {@code up to about 1.13 kg}, {@code 9 lb and over}; empty where the
     *     table has none
     */
    public String limits(String pounds) {
        if (pounds.isEmpty()) {
            return "";
        }
        String numbers = this == LB
                ? pounds
                : NUMBER.matcher(NUMBER.matcher(pounds).replaceAll(WeightUnit::kilograms))
                        .replaceFirst("about $0");
        return numbers.endsWith(" and over")
                ? numbers.replace(" and over", " " + sign + " and over")
                : numbers + " " + sign;
    }

    private static String kilograms(MatchResult pounds) {
        return new BigDecimal(pounds.group())
                .multiply(KILOGRAMS_A_POUND)
                .setScale(PLACES, RoundingMode.HALF_UP)
                .toString();
    }

    /** A rabbit's weight: as the roster gives it where that is in this unit, else turned into it. */
    public String of(Weight weight) {
        if (weight.asWritten().contains(sign)) {
            return weight.asWritten();
        }
        BigDecimal pounds = BigDecimal.valueOf(weight.pounds());
        return "about "
                + (this == LB ? pounds : pounds.multiply(KILOGRAMS_A_POUND)).setScale(PLACES, RoundingMode.HALF_UP)
                + " " + sign;
    }
}
