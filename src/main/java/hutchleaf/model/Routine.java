package hutchleaf.model;

import java.util.List;

/** The stops and the orders they are shown in. */
public record Routine(List<Station> stations, List<Order> orders) {
    public static final int STOPS = 16;

    public Routine {
        stations = List.copyOf(stations);
        orders = List.copyOf(orders);
    }

    public Station station(int no) {
        return stations.get(no - 1);
    }

    /** The stops a level studies: the first order whose levels start closest to it. */
    public Order orderFor(Level level) {
        return orders.stream()
                .filter(order -> order.levels().holds(level))
                .reduce((one, other) ->
                        other.levels().from().compareTo(one.levels().from()) > 0 ? other : one)
                .orElseThrow(() -> new IllegalStateException("no order for " + level));
    }
}
