package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.model.Setting;
import hutchleaf.sheet.Paper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What was asked of a command that prints for a club.
 *
 * @param folder the club's; empty for the demo club
 * @param paper in place of the club's own
 * @param setting of members whose row names none
 * @param skipBad prints the other members where rows are wrong
 */
record ClubRequest(
        Optional<Path> folder,
        Path out,
        Optional<Paper> paper,
        Optional<Path> content,
        Optional<Path> templates,
        Optional<LocalDate> today,
        Setting setting,
        boolean skipBad,
        Outputs.Pictures pictures,
        Club.Saver saver) {
    /** The plain run on a club's folder. */
    static ClubRequest of(Path folder, Path out) {
        return new ClubRequest(
                Optional.of(folder),
                out,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Setting.ORDINARY,
                false,
                Outputs.Pictures.NONE,
                Club.Saver.NO);
    }
}
