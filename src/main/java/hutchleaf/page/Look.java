package hutchleaf.page;

import hutchleaf.model.Level;
import hutchleaf.sheet.Paper;
import java.util.Locale;

/**
 * What every page of a publication shares: the level's name and mark, and the page it is set on.
 *
 * @param toes black toes of the level's mark, 1 to 4
 */
record Look(String level, String word, int toes, boolean primary, TypeScale type, Frame frame) {
    /**
     * A page and its text area, in millimetres.
     *
     * @param text width of the column beside the rail
     */
    record Frame(String paper, double width, double height, double right, double live, double text, double liveHeight) {
        private static final double LEFT = 20;
        private static final double TOP = 15;
        private static final double BOTTOM = 20;
        private static final double RAIL_AND_GAP = 44;

        static Frame of(Paper paper) {
            double right = paper == Paper.LETTER ? 17.9 : 18;
            double live = tenth(paper.width().mm() - LEFT - right);
            return new Frame(
                    paper.name().toLowerCase(Locale.ROOT),
                    tenth(paper.width().mm()),
                    tenth(paper.height().mm()),
                    right,
                    live,
                    tenth(live - RAIL_AND_GAP),
                    tenth(paper.height().mm() - TOP - BOTTOM));
        }

        private static double tenth(double millimetres) {
            return Math.round(millimetres * 10) / 10.0;
        }
    }

    static Look of(Level level, Paper paper) {
        return new Look(
                level.title(),
                level.word(),
                level.blackToes(),
                level == Level.PRIMARY,
                TypeScale.of(level),
                Frame.of(paper));
    }
}
