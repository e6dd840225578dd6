package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.sheet.Booklet;
import hutchleaf.sheet.Grammage;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What was asked of {@code packets}.
 *
 * @param only reprints the packet of this member and nothing else
 * @param booklet the reading pages as a booklet of half-sheet pages
 * @param font for letters that the fonts of the program lack
 */
record PacketOptions(
        ClubRequest club,
        Optional<Club.Spelling> spelling,
        Optional<String> only,
        Cards cards,
        boolean withGuide,
        Optional<Folded> booklet,
        Optional<Path> font) {
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
    static PacketOptions of(Path folder, Path out) {
        return new PacketOptions(
                ClubRequest.of(folder, out),
                Optional.empty(),
                Optional.empty(),
                Cards.PLAN,
                false,
                Optional.empty(),
                Optional.empty());
    }
}
