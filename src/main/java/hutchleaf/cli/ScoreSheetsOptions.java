package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.model.Setting;
import hutchleaf.page.JudgedClass.Beside;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.Spare;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What was asked of {@code scoresheets}.
 *
 * @param folder the club's; empty for the demo club
 * @param paper in place of the club's own
 */
record ScoreSheetsOptions(
        Optional<Path> folder,
        Path out,
        Optional<Paper> paper,
        Optional<Path> content,
        Optional<Path> templates,
        Optional<LocalDate> today,
        Wanted wanted,
        Setting setting,
        Outputs.Pictures pictures,
        Club.Saver saver) {
    /**
     * For whom, and how many.
     *
     * @param division a level's word or the division's name; empty for all
     * @param copies of each contestant's sheet, or sheets in all when they are blank
     * @param blank without contestants
     * @param judges 1 or 2
     * @param title the show's name in place of the club's own
     */
    record Wanted(
            Optional<String> division,
            Optional<Integer> copies,
            Spare spare,
            boolean blank,
            int judges,
            Beside beside,
            Optional<String> title) {}

    /** As the reader of the club's folder wants them. */
    PacketOptions asPackets() {
        return new PacketOptions(
                folder,
                out,
                paper,
                Optional.empty(),
                content,
                templates,
                today,
                Optional.empty(),
                false,
                PacketOptions.Cards.PLAN,
                false,
                setting,
                Optional.empty(),
                pictures,
                Optional.empty(),
                saver);
    }
}
