package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.model.Setting;
import hutchleaf.sheet.Booklet;
import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.Paper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What was asked of {@code packets}.
 *
 * @param folder the club's; empty for the demo club
 * @param paper in place of the club's own
 * @param only reprints the packet of this member and nothing else
 * @param setting of the packets of members whose row names none
 * @param font for letters that the fonts of the program lack
 * @param booklet the reading pages as a booklet of half-sheet pages
 * @param skipBad prints the other members where rows are wrong
 */
record PacketOptions(
        Optional<Path> folder,
        Path out,
        Optional<Paper> paper,
        Optional<Club.Spelling> spelling,
        Optional<Path> content,
        Optional<Path> templates,
        Optional<LocalDate> today,
        Optional<String> only,
        boolean skipBad,
        Cards cards,
        boolean withGuide,
        Setting setting,
        Optional<Folded> booklet,
        Outputs.Pictures pictures,
        Optional<Path> font,
        Club.Saver saver) {
    /** Which cards a packet holds beside the member's own. */
    enum Cards {
        /** Those that the study plan uses. */
        PLAN,
        /** Those of the plan that are new since last year. */
        NEW_ONLY,
        /** The whole deck of the level. */
        WHOLE_DECK
    }

    /**
     * How a booklet is made.
     *
     * @param weight of its paper; empty for that of office paper
     */
    record Folded(Booklet.Binding binding, Optional<Grammage> weight) {}

    /** The plain run on a club's folder. */
    static PacketOptions of(Optional<Path> folder, Path out) {
        return new PacketOptions(
                folder,
                out,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Cards.PLAN,
                false,
                Setting.ORDINARY,
                Optional.empty(),
                Outputs.Pictures.NONE,
                Optional.empty(),
                Club.Saver.NO);
    }
}
