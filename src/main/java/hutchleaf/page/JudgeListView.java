package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What the templates of a judge's lists see: check-in and order of showing, the seal on the questions, call-backs and
 * tally. Places are millimetres from the page's top left corner.
 *
 * @param checksIn whether the class is checked in on this list; with two judges it is on the first one's
 * @param points of each judge, where there are any
 * @param contents what lies on the clipboard, from the top
 */
record JudgeListView(
        Look look,
        JudgeHead head,
        Frame at,
        boolean checksIn,
        Columns columns,
        Optional<Points> points,
        List<Content> contents,
        int pages,
        List<Lines> checkIn,
        List<Lines> order,
        List<Lines> tally,
        List<Seal> seals) {
    /** The page, and where its lines end. */
    record Frame(double width, double height, double right) {}

    /** What the order of showing tells beside the numbers. */
    record Columns(boolean names, boolean rabbits) {}

    /**
     * What is added up.
     *
     * @param each most points that a judge gives
     * @param judges 1 or 2
     */
    record Points(int each, int judges) {}

    /** A kind of page on the clipboard. */
    record Content(int pages, String what) {}

    /** Lines of a list on one page. */
    record Lines(List<Line> lines) {}

    /** One contestant; all empty where it is written by hand. */
    record Line(
            Optional<Integer> number,
            Optional<String> called,
            Optional<String> name,
            Optional<String> rabbit,
            Optional<String> breed,
            Optional<String> ear) {}

    /** A question set in the envelope. */
    record Seal(String letter, int pages, String use) {}
}
