package hutchleaf.model;

import hutchleaf.problem.Place;

/**
 * Where facts come from.
 *
 * @param year as printed, or {@code n.d.}
 * @param fromMemory true when the page itself was not seen
 */
public record Source(String id, String title, String publisher, String year, boolean fromMemory, Place at) {}
