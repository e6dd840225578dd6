package hutchleaf.press;

import java.util.Map;

/**
 * A finished PDF.
 *
 * @param pageOf the 1-based page on which each element with an {@code id} starts
 */
public record Printed(byte[] pdf, int pages, Map<String, Integer> pageOf) {
    public Printed {
        pageOf = Map.copyOf(pageOf);
    }
}
