package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Packet;
import hutchleaf.model.Setting;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.Optional;

/**
 * Paper for a member who shows in another way: a talk-through sheet, by which the member directs a helper's hands, and a
 * cue card, the stops in key words on one page to fold.
 */
public final class HelpPapers {
    private static final String TALK_THROUGH = "talk-through";
    private static final String CUE_CARD = "cue-card";

    private final Templates templates;
    private final Paper paper;
    private final Setting setting;

    HelpPapers(Templates templates, Paper paper, Setting setting) {
        this.templates = templates;
        this.paper = paper;
        this.setting = setting;
    }

    /** A level's talk-through sheet, with lines to fill. */
    public Optional<Manuscript> talkThrough(Edition edition, Problems problems) {
        return manuscript(TALK_THROUGH, "talk-through sheet", HelpPages.of(edition, paper, setting), problems);
    }

    /** A member's talk-through sheet, with the words of the rabbit to show. */
    public Optional<Manuscript> talkThrough(Packet packet, Problems problems) {
        return manuscript(TALK_THROUGH, "talk-through sheet", HelpPages.of(packet, paper), problems);
    }

    /** A level's cue card. */
    public Optional<Manuscript> cueCard(Edition edition, Problems problems) {
        return manuscript(CUE_CARD, "cue card", HelpPages.of(edition, paper, setting), problems);
    }

    /** A member's cue card. */
    public Optional<Manuscript> cueCard(Packet packet, Problems problems) {
        return manuscript(CUE_CARD, "cue card", HelpPages.of(packet, paper), problems);
    }

    private Optional<Manuscript> manuscript(String template, String what, HelpView view, Problems problems) {
        Look look = view.look();
        return templates.manuscript(look.level() + " " + what + look.set().title(), template + ".ftl", view, problems);
    }
}
