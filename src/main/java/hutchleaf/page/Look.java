package hutchleaf.page;

import hutchleaf.model.Level;
import hutchleaf.model.Setting;
import hutchleaf.sheet.HalfSheet;
import hutchleaf.sheet.Paper;
import java.util.Locale;

/**
 * What every page of a publication shares: the level's name and mark, and the page it is set on.
 *
 * @param toes black toes of the level's mark, 1 to 4
 */
record Look(String level, String word, int toes, boolean primary, Set set, TypeScale type, Frame frame) {
    /**
     * What a template asks of the setting.
     *
     * @param open in one column without a rail, whose pages may flow
     */
    record Set(boolean open, boolean large, boolean easy, String title) {
        private static Set of(Setting setting) {
            return new Set(
                    setting != Setting.ORDINARY, setting == Setting.LARGE, setting == Setting.EASY, setting.title());
        }
    }

    /**
     * A page and its text area, in millimetres.
     *
     * @param text width of the column beside the rail
     * @param half whether it is a page of half a sheet
     */
    record Frame(
            String paper,
            double width,
            double height,
            double right,
            double live,
            double text,
            double liveHeight,
            boolean half) {
        private static final double LEFT = 20;
        private static final double TOP = 15;
        private static final double BOTTOM = 20;
        private static final double OPEN_BOTTOM = 24;
        private static final double RAIL_AND_GAP = 44;
        /** Room for a thumb, a staple and the fold. */
        private static final double HALF_SIDE = 12;

        private static final double HALF_TOP = 10;
        /** The foot line ends 7 mm or more above the edge, where any printer prints. */
        private static final double HALF_BOTTOM = 16;

        static Frame of(Paper paper, Setting setting) {
            double right = paper == Paper.LETTER ? 17.9 : 18;
            double live = tenth(paper.width().mm() - LEFT - right);
            return new Frame(
                    paper.name().toLowerCase(Locale.ROOT),
                    tenth(paper.width().mm()),
                    tenth(paper.height().mm()),
                    right,
                    live,
                    setting == Setting.ORDINARY ? tenth(live - RAIL_AND_GAP) : live,
                    tenth(paper.height().mm() - TOP - (setting == Setting.ORDINARY ? BOTTOM : OPEN_BOTTOM)),
                    false);
        }

        /** Half a sheet, with equal margins left and right: it is a left page as often as a right one. */
        static Frame half(Paper paper) {
            HalfSheet page = HalfSheet.of(paper);
            double live = page.width().mm() - 2 * HALF_SIDE;
            return new Frame(
                    paper.name().toLowerCase(Locale.ROOT),
                    page.width().mm(),
                    page.height().mm(),
                    HALF_SIDE,
                    live,
                    live,
                    page.height().mm() - HALF_TOP - HALF_BOTTOM,
                    true);
        }

        private static double tenth(double millimetres) {
            return Math.round(millimetres * 10) / 10.0;
        }
    }

    static Look of(Level level, Paper paper) {
        return of(level, paper, Setting.ORDINARY);
    }

    static Look of(Level level, Paper paper, Setting setting) {
        return of(level, setting, Frame.of(paper, setting));
    }

    /** Of a booklet: pages of half a sheet. */
    static Look half(Level level, Paper paper) {
        return of(level, Setting.ORDINARY, Frame.half(paper));
    }

    private static Look of(Level level, Setting setting, Frame frame) {
        return new Look(
                level.title(),
                level.word(),
                level.blackToes(),
                level == Level.PRIMARY,
                Set.of(setting),
                TypeScale.of(level, setting),
                frame);
    }
}
