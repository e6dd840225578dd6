package hutchleaf.page;

/**
 * What some card sheets are a part of.
 *
 * @param name printed in the corner of each sheet, for example {@code Junior deck}
 * @param before sheets of the same file that come before these
 * @param after sheets of the same file that come after these
 * @param tells whether a first page tells how to make the cards
 */
public record DeckPart(String name, int before, int after, boolean tells) {}
