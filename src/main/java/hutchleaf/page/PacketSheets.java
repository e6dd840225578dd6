package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.PacketWords.Heading;
import hutchleaf.model.Setting;
import hutchleaf.page.LabelItView.Sheet;
import hutchleaf.sheet.Paper;
import java.util.List;

/**
 * What the template of a packet's sheets to write on sees.
 *
 * @param watch for whoever watches and scores a practice
 * @param learned what the member finishes afterwards
 * @param sheets figures to label
 * @param total pages of the file; 0 while it is not known
 */
record PacketSheets(Look look, List<Xml> watch, List<Xml> learned, List<Sheet> sheets, int total) {
    static PacketSheets of(Edition edition, Paper paper, Setting setting, int total) {
        Markup markup = Markup.unlinked(edition);
        return new PacketSheets(
                Look.of(edition.level(), paper, setting),
                markup.writeAll(edition.library().contest().packet().lines(Heading.WATCH_FOR, edition.level())),
                markup.writeAll(edition.library().contest().packet().lines(Heading.LEARNED, edition.level())),
                firstAndLast(LabelItPages.of(edition, paper, setting).sheets()),
                total);
    }

    /** The whole rabbit, and what is new at the level; all the others are printed for the binder. */
    private static List<Sheet> firstAndLast(List<Sheet> sheets) {
        return sheets.size() < 2 ? sheets : List.of(sheets.get(0), sheets.get(sheets.size() - 1));
    }
}
