package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Packet;
import hutchleaf.model.Member;
import hutchleaf.model.Setting;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.Optional;

/** A packet's own pages, in the setting that its member needs. */
public final class PacketPapers {
    private final Templates templates;
    private final Paper paper;

    PacketPapers(Templates templates, Paper paper) {
        this.templates = templates;
        this.paper = paper;
    }

    /** The reading pages: letter, rabbit, routine, study plan, checklist and pocket sheet. */
    public Optional<Manuscript> read(Packet packet, Problems problems) {
        Setting setting = packet.needs().setting();
        return templates.manuscript(
                "Show packet for " + whose(packet) + setting.title(),
                Form.PACKET.template(setting),
                PacketPages.of(packet, paper),
                problems);
    }

    /** The same as pages of half a sheet, for a booklet; without the pocket sheet. */
    public Optional<Manuscript> booklet(Packet packet, Problems problems) {
        return templates.manuscript(
                "Show booklet for " + whose(packet),
                "packet-booklet.ftl",
                PacketPages.booklet(packet, paper),
                problems);
    }

    /** The pocket sheet by itself. */
    public Optional<Manuscript> pocketSheet(Packet packet, Problems problems) {
        return templates.manuscript(
                "Pocket sheet for " + whose(packet), "packet-pocket.ftl", PacketPages.of(packet, paper), problems);
    }

    /**
     * What the sheets to write on have in common at a level: what to watch for, what was learned, figures to label.
     *
     * @param total pages of the file; 0 while it is not known
     */
    public Optional<Manuscript> sheets(Edition edition, Setting setting, int total, Problems problems) {
        return templates.manuscript(
                edition.level().title() + " practice sheets" + setting.title(),
                "packet-sheets.ftl",
                PacketSheets.of(edition, paper, setting, total),
                problems);
    }

    private static String whose(Packet packet) {
        return packet.member().map(Member::name).orElse("any rabbit");
    }
}
