package hutchleaf.model;

/**
 * A figure of the content tree.
 *
 * @param file path from the content root, for example {@code figures/eye-normal.svg}
 * @param ratio its width divided by its height
 */
public record Drawing(String file, double ratio) {}
