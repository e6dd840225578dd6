package hutchleaf.content;

import hutchleaf.model.Order;
import hutchleaf.model.Routine;
import hutchleaf.model.Station;
import hutchleaf.model.Station.SideUp;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code routine/stations.md}: the table of stops, then the table of orders. */
final class StationsReader {
    private static final List<String> STOPS = List.of("no", "name", "short name", "side up", "do", "say", "pocket");
    private static final List<String> ORDERS = List.of("order", "stops", "levels", "when");

    private StationsReader() {}

    static Routine read(MarkdownFile file, Problems problems) {
        List<Station> stations = new ArrayList<>();
        for (Table.Row row : DataFile.table(file, 0, STOPS, problems)) {
            SideUp side =
                    row.oneOf("side up", List.of("upright", "back")).equals("back") ? SideUp.BACK : SideUp.UPRIGHT;
            if (row.number("no") != stations.size() + 1) {
                problems.add(row.at(), "stop " + row.text("no") + " is out of order", "number the stops 1 to 16");
            }
            stations.add(new Station(
                    stations.size() + 1,
                    row.need("name"),
                    row.need("short name"),
                    side,
                    row.need("do"),
                    row.need("say"),
                    row.need("pocket")));
        }
        if (stations.size() != Routine.STOPS) {
            problems.add(file.at(), stations.size() + " stops in the table", "the routine has " + Routine.STOPS);
        }
        return new Routine(stations, orders(file, problems));
    }

    private static List<Order> orders(MarkdownFile file, Problems problems) {
        List<Order> orders = new ArrayList<>();
        for (Table.Row row : DataFile.table(file, 1, ORDERS, problems)) {
            orders.add(new Order(row.need("order"), row.stops("stops"), row.levels("levels"), row.need("when")));
        }
        return orders;
    }
}
