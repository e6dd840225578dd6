package hutchleaf.model;

/**
 * One row of the breed table.
 *
 * @param classes 4 or 6
 */
public record Breed(
        String name,
        String bodyType,
        String pose,
        String ears,
        String fur,
        int classes,
        Weights weights,
        Showing showing,
        Basis basis) {
    /** Senior weights in pounds as printed, for example {@code 3.5 to 5.5}; empty where none is known. */
    public record Weights(String buck, String doe) {}

    /** What a member says when showing it, and what judges look for. */
    public record Showing(String say, String judgesLookFor) {}
}
