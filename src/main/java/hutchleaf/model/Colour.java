package hutchleaf.model;

/**
 * One row of the colour table.
 *
 * @param look what is seen
 * @param confusedWith a colour that is close, and the difference; may be empty
 */
public record Colour(
        String name, String group, String eye, String nails, String look, String confusedWith, Basis basis) {}
