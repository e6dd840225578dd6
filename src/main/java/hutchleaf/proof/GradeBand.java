package hutchleaf.proof;

import hutchleaf.model.Level;
import java.util.Optional;

/**
 * How hard the text of a level may be. The band is published; the bounds are ours: warn above the band below, fail above the
 * band.
 *
 * @param grades the school grades of the level's readers
 * @param lowest the least Flesch-Kincaid grade of a text for them: Common Core State Standards, supplement to Appendix A,
 *     updated text complexity grade bands
 * @param highest the most, from the same table
 * @param fleschKincaid bounds of the Flesch-Kincaid grade
 * @param spache bounds of the Spache grade, for the youngest, for whom Flesch-Kincaid is weak
 */
record GradeBand(String grades, double lowest, double highest, Bounds fleschKincaid, Optional<Bounds> spache) {
    /** A text above the first is warned of, one above the second is too hard. Own rule. */
    record Bounds(double warnAbove, double failAbove) {}

    /** The band of a level: ages 5-7, 8-10, 11-13 and 14-18. The youngest get the first that is published, grades 2-3. */
    static GradeBand of(Level level) {
        return switch (level) {
            case PRIMARY -> new GradeBand("2-3", 1.98, 5.34, new Bounds(1.9, 5.3), Optional.of(new Bounds(2.0, 3.0)));
            case JUNIOR -> new GradeBand("4-5", 4.51, 7.73, new Bounds(4.5, 7.7), Optional.empty());
            case INTERMEDIATE -> new GradeBand("6-8", 6.51, 10.34, new Bounds(7.7, 10.3), Optional.empty());
            case SENIOR -> new GradeBand("9-10", 8.32, 12.12, new Bounds(10.3, 12.1), Optional.empty());
        };
    }
}
