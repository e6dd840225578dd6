package hutchleaf.page;

import hutchleaf.model.Level;
import hutchleaf.model.Setting;

/**
 * Type sizes of a level's guide, in points. Floors: body 16, 13, 11.5 and 10.5; tables 10; notes 9.5.
 *
 * @param line line height as a multiple of the size
 */
record TypeScale(double body, double line, double table, double note, double wordColumn) {
    private static final double TABLE_FLOOR = 10;
    private static final double NOTE_FLOOR = 9.5;
    private static final double LARGE = 18;
    private static final double OPEN_LINE = 1.5;

    static TypeScale of(Level level) {
        return switch (level) {
            case PRIMARY -> of(16, 1.42, 34);
            case JUNIOR -> of(13, 1.40, 34);
            case INTERMEDIATE -> of(11.5, 1.40, 34);
            case SENIOR -> of(10.5, 1.42, 34);
        };
    }

    /**
     * Sizes of a level in a setting. Large print: 18 pt on everything (American Printing House, Kitchel; American Council of
     * the Blind), lines of 1.5 (its older guidelines). Easy read: no text smaller than the level’s body, lines of 1.5 (British Dyslexia
     * Association, from memory).
     */
    static TypeScale of(Level level, Setting setting) {
        TypeScale ordinary = of(level);
        return switch (setting) {
            case ORDINARY -> ordinary;
            case LARGE -> new TypeScale(LARGE, OPEN_LINE, LARGE, LARGE, ordinary.wordColumn);
            case EASY -> new TypeScale(ordinary.body, OPEN_LINE, ordinary.body, ordinary.body, ordinary.wordColumn);
        };
    }

    private static TypeScale of(double body, double line, double wordColumn) {
        return new TypeScale(
                body,
                line,
                Math.max(TABLE_FLOOR, tenth(body * 0.92)),
                Math.max(NOTE_FLOOR, tenth(body * 0.8)),
                wordColumn);
    }

    private static double tenth(double points) {
        return Math.round(points * 10) / 10.0;
    }
}
