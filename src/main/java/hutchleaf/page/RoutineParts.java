package hutchleaf.page;

import hutchleaf.page.PacketView.RoutinePage;
import hutchleaf.page.PacketView.StopRow;
import java.util.ArrayList;
import java.util.List;

/** The routine where pages flow: parts before, while and after the rabbit lies on its back, for which the stop rule stands below. */
final class RoutineParts {
    private static final int FIRST_ON_BACK = 5;
    private static final int LAST_ON_BACK = 13;

    private RoutineParts() {}

    static List<RoutinePage> of(List<StopRow> rows) {
        List<RoutinePage> parts = new ArrayList<>();
        int from = 0;
        for (int row = 1; row <= rows.size(); row++) {
            if (row == rows.size() || onBack(rows.get(row)) != onBack(rows.get(from))) {
                parts.add(RoutineRows.page(rows.subList(from, row)));
                from = row;
            }
        }
        return parts;
    }

    static boolean onBack(StopRow row) {
        return row.no() >= FIRST_ON_BACK && row.no() <= LAST_ON_BACK;
    }
}
