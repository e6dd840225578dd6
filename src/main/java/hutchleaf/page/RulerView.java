package hutchleaf.page;

import java.util.List;

/**
 * What the template of the ruler sheet sees: two pages held sideways, places and lengths in millimetres.
 *
 * @param front lines and labels of the first side
 * @param back lines and labels of the second
 * @param table what to write for what a ruler shows
 */
record RulerView(double width, double height, Side front, Side back, List<Row> table, Example example) {
    /** What a side is drawn with. */
    record Side(List<Line> lines, List<Label> labels) {}

    /** A filled rectangle. */
    record Line(double x, double y, double width, double height) {}

    /** A word, its middle. */
    record Label(double x, double y, String text) {}

    /**
     * A row of the table.
     *
     * @param level what the ruler shows beside the level line: mm
     * @param scaleX what to write for it: percent
     * @param upright what the ruler shows beside the upright line: mm
     * @param scaleY what to write for it: percent
     */
    record Row(String level, String scaleX, String upright, String scaleY) {}

    /** A worked example: what was read, and the line that it gives. */
    record Example(String level, String upright, String line) {}
}
