package hutchleaf.cli;

import hutchleaf.page.JudgedClass.Beside;
import hutchleaf.sheet.Spare;
import java.util.Optional;

/** What was asked of {@code scoresheets}. */
record ScoreSheetsOptions(ClubRequest club, Wanted wanted) {
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
}
