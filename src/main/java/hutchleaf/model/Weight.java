package hutchleaf.model;

/**
 * What a rabbit weighs.
 *
 * @param pounds avoirdupois, of 0.45359237 kg (the international pound of 1959)
 * @param asWritten with its unit, as the roster gives it: {@code 4.5 lb}
 */
public record Weight(double pounds, String asWritten) {
    private static final double KILOGRAMS_A_POUND = 0.45359237;

    /** The same weight, written in a unit. */
    public Weight in(WeightUnit unit) {
        return new Weight(pounds, unit.of(this));
    }

    public static Weight ofPounds(double pounds, String asWritten) {
        return new Weight(pounds, asWritten);
    }

    public static Weight ofKilograms(double kilograms, String asWritten) {
        return new Weight(kilograms / KILOGRAMS_A_POUND, asWritten);
    }
}
