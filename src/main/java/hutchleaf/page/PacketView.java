package hutchleaf.page;

import hutchleaf.page.GuideView.BlockView;
import hutchleaf.page.GuideView.PictureView;
import java.util.List;
import java.util.Optional;

/**
 * What the template of a member's reading pages sees.
 *
 * @param name the member's; empty where it is written in by hand
 * @param foot what stands at the foot of every page
 */
record PacketView(
        Look look,
        List<PictureView.Size> sizes,
        String name,
        String foot,
        Letter letter,
        List<RabbitView> rabbits,
        List<RoutineView> routines,
        PlanView plan,
        Lists lists) {
    /**
     * The first page.
     *
     * @param facts about the member and the rabbit to show
     * @param grownUp what the grown-up of a primary member reads first
     */
    record Letter(
            List<BlockView> blocks,
            List<FactView> facts,
            String showName,
            String showDate,
            String toGo,
            List<Xml> howToUse,
            List<Xml> grownUp,
            String place) {}

    /** A line of facts; without a value it is a line to write on. */
    record FactView(String label, Optional<Xml> value, Optional<String> note) {}

    /** The pages about one rabbit. */
    record RabbitView(
            String anchor,
            String name,
            List<FactView> strip,
            List<PictureView> pictures,
            List<FindView> finds,
            List<FactView> breed,
            String breedName,
            List<TickView> ticks,
            List<BuildView> comments,
            List<String> grades,
            List<AskView> questions) {}

    /** What the judge should find, and how it is said. */
    record FindView(String stops, String point, Xml found, Optional<String> say) {}

    /** A sentence to tick. */
    record TickView(String sentence) {}

    /** A comment to build. */
    record BuildView(String part, String praise, String lookFor, String start) {}

    /** A likely question with its points. */
    record AskView(Xml question, String need, List<Xml> points) {}

    /** The routine with one rabbit's words. */
    record RoutineView(
            String anchor, String rabbit, List<RoutinePage> pages, List<PocketSide> pocket, String upright) {}

    /**
     * One page of it.
     *
     * @param stopRule whether the rabbit is on its back on it
     */
    record RoutinePage(List<StopRow> stops, boolean stopRule, String span) {}

    /**
     * A stop: hands at the left, voice at the right.
     *
     * @param grownUp what an adult does at it, for primary
     * @param place where its words are written
     */
    record StopRow(
            int no, String name, String doing, Optional<Xml> grownUp, Xml say, Optional<Xml> ifFound, String place) {}

    /** One half of the pocket sheet: four panels, top to bottom. */
    record PocketSide(List<PocketPanel> panels) {}

    /**
     * A panel.
     *
     * @param kind {@code cover}, {@code stops} or {@code stuck}
     */
    record PocketPanel(String kind, List<PocketStop> stops) {}

    /** A stop in key words. */
    record PocketStop(int no, String name, String words) {}

    /**
     * The study plan.
     *
     * @param rowHeight of a week, in millimetres
     */
    record PlanView(
            String title,
            String lead,
            List<String> weekdays,
            List<Week> weeks,
            double rowHeight,
            List<Pile> piles,
            List<String> notes,
            String busiest) {}

    /** Seven days from Sunday. */
    record Week(List<DayView> days) {}

    /**
     * A day of the plan.
     *
     * @param kind {@code outside}, {@code study}, {@code catchup}, {@code rest} or {@code show}
     * @param fresh the number of the pile that is new; 0 for none
     * @param again the piles seen again
     * @param practice {@code toy}, {@code rabbit} or nothing
     */
    record DayView(String kind, String date, String toGo, int fresh, String again, String practice, String practised) {}

    /** The cards that are new on one day. */
    record Pile(int no, String codes) {}

    /** What there is to tick and to keep. */
    record Lists(List<CheckList> checks, List<Xml> withRabbit, int logRows) {}

    /** Things to tick. */
    record CheckList(String heading, List<Xml> items) {}
}
