package hutchleaf.proof;

import hutchleaf.model.Level;
import hutchleaf.model.Subject;
import java.util.List;

/** How much of everything each level gets. */
public record Coverage(List<StopRow> stops, List<SubjectRow> subjects) {
    /**
     * One stop at one level.
     *
     * @param scored whether the level's score sheet has a place for it
     */
    public record StopRow(Level level, int no, String name, Texts texts, Practice practice, boolean scored) {}

    /** Which of the texts of a stop are there. */
    public record Texts(boolean inShort, boolean steps, boolean caution, boolean sayIt, boolean ifYouFindIt) {}

    /** How much there is to learn with. */
    public record Practice(int cards, int core, int questions) {}

    /** One subject at one level. */
    public record SubjectRow(Level level, Subject subject, int topics, int terms, Practice practice) {}

    public Coverage {
        stops = List.copyOf(stops);
        subjects = List.copyOf(subjects);
    }
}
