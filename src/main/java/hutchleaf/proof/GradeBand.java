package hutchleaf.proof;

import hutchleaf.model.Level;

/**
 * How hard the text of a level may be. The band is published; the two bounds are ours: warn above the band below, fail above
 * the band.
 *
 * @param grades the school grades of the level's readers
 * @param lowest the least Flesch-Kincaid grade of a text for them: Common Core State Standards, supplement to Appendix A,
 *     updated text complexity grade bands
 * @param highest the most, from the same table
 * @param measure the formula that the two bounds are for
 * @param warnAbove a text above this is warned of; common sense, no source
 * @param failAbove a text above this is too hard; common sense, no source
 */
record GradeBand(String grades, double lowest, double highest, Measure measure, double warnAbove, double failAbove) {
    /** Spache where the youngest read, for whom Flesch-Kincaid is weak. */
    enum Measure {
        SPACHE,
        FLESCH_KINCAID
    }

    /** The band of a level: ages 5-7, 8-10, 11-13 and 14-18. The youngest get the first that is published, grades 2-3. */
    static GradeBand of(Level level) {
        return switch (level) {
            case PRIMARY -> new GradeBand("2-3", 1.98, 5.34, Measure.SPACHE, 2.0, 3.0);
            case JUNIOR -> new GradeBand("4-5", 4.51, 7.73, Measure.FLESCH_KINCAID, 4.5, 7.7);
            case INTERMEDIATE -> new GradeBand("6-8", 6.51, 10.34, Measure.FLESCH_KINCAID, 7.7, 10.3);
            case SENIOR -> new GradeBand("9-10", 8.32, 12.12, Measure.FLESCH_KINCAID, 10.3, 12.1);
        };
    }
}
