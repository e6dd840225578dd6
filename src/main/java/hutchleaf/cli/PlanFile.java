package hutchleaf.cli;

import hutchleaf.page.Publications;
import hutchleaf.press.Press;
import hutchleaf.problem.Problems;
import java.util.List;

/** Makes the leader's print plan from what was printed. */
record PlanFile(PacketRoster roster, Contestants numbers, Publications publications, Press press, Problems problems) {
    void write(List<PacketPrinter.Made> made, Outputs outputs) {}
}
