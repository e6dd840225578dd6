package hutchleaf.model;

import hutchleaf.problem.Place;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A member's rabbit, as the roster gives it.
 *
 * @param breed its row of the breed table; empty for a mixed breed
 * @param coat its variety and the rows that stand behind it
 * @param earNumber as written, never read as a number: {@code 0042}
 * @param at its line of the roster
 */
public record Rabbit(
        String name,
        Optional<Breed> breed,
        Coat coat,
        Sex sex,
        LocalDate born,
        String earNumber,
        Optional<Weight> weight,
        Place at) {
    /**
     * What its coat is called.
     *
     * @param variety as it is said aloud, for example {@code broken black tortoise}
     * @param colour its row of the colour table; for a broken coat the row of the coloured part; empty for a mixed breed
     *     whose coat has no name
     * @param broken white with patches of the colour
     */
    public record Coat(String variety, Optional<Colour> colour, boolean broken) {}

    /** The same rabbit, its weight and the limits of its breed to be printed in a unit. */
    public Rabbit in(WeightUnit unit) {
        return new Rabbit(
                name, breed.map(row -> row.in(unit)), coat, sex, born, earNumber, weight.map(own -> own.in(unit)), at);
    }

    /** The breed as it is said: {@code Dutch}, or {@code mixed breed}. */
    public String breedName() {
        return breed.map(Breed::name).orElse("mixed breed");
    }
}
