package hutchleaf.model;

import java.util.List;

/** An order in which stops are shown, the levels that may use it, and when. */
public record Order(String name, List<Integer> stops, Levels levels, String when) {
    public Order {
        stops = List.copyOf(stops);
    }
}
