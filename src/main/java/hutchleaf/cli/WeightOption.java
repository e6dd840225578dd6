package hutchleaf.cli;

import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.Stock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** {@code --weight}, of the paper that booklets are printed on. */
final class WeightOption {
    private static final double LEAST = 50;
    private static final double MOST = 200;

    @Option(
            names = "--weight",
            paramLabel = "GRAMS",
            description =
                    "of a square metre of a booklet's paper, 50 to 200: inner pages move by its thickness (default:"
                            + " that of office paper)")
    private @Nullable Double grams;

    /** What was asked for, or what office paper of this size weighs. */
    Grammage of(Paper paper) {
        return grams == null ? Stock.PLAIN.grammage(paper) : new Grammage(grams);
    }

    Optional<Grammage> chosen() {
        return Optional.ofNullable(grams).map(Grammage::new);
    }

    /** What is wrong with it. */
    Optional<String> wrong() {
        return grams == null || (grams >= LEAST && grams <= MOST)
                ? Optional.empty()
                : Optional.of(
                        "--weight " + grams + ": no paper to fold weighs that; write 50 to 200, office paper has 80");
    }
}
