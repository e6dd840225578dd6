package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.press.Corrected;
import hutchleaf.press.Printed;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardMaking.Axis;
import hutchleaf.sheet.Correction;
import java.util.Optional;

/**
 * One printer's faults, and where a leader wrote them down.
 *
 * @param at the option, or the line of the club's file
 */
record PrinterSetting(Correction correction, Place at) {
    /** Pages stay as they are. */
    static final PrinterSetting NONE = new PrinterSetting(Correction.NONE, Place.whole("--printer"));

    static PrinterSetting of(Club.Printer printer) {
        return new PrinterSetting(printer.correction(), printer.at());
    }

    /**
     * Pages as this printer needs them, with a warning where that moves ink to where many printers have none.
     *
     * @param pages held sideways
     * @param turnedOn the line on which every second page, a back, is turned; empty where all are fronts
     * @param file named in the warning
     */
    Printed correct(Printed pages, Optional<Axis> turnedOn, String file, Problems problems) {
        if (correction.changesNothing()) {
            return pages;
        }
        Printed corrected = Corrected.of(pages, correction, turnedOn);
        if (Corrected.nearTheEdge(corrected, Correction.EDGE).isPresent()) {
            problems.warn(
                    at,
                    "the printer's corrections bring print of " + file + " nearer than "
                            + Math.round(Correction.EDGE.mm())
                            + " mm to the edge of the sheet, where many printers leave it blank",
                    "print one sheet and look at its edges; if something is missing, measure again with"
                            + " 'hutchleaf ruler'");
        }
        return corrected;
    }
}
