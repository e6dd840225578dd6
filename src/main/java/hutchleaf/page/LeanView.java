package hutchleaf.page;

import java.util.List;

/** What the template of a lean guide sees. Every text in it is finished XHTML or plain words. */
record LeanView(
        Look look,
        List<GuideView.PictureView.Size> sizes,
        String club,
        String belongsTo,
        List<GuideView.RoutineRow> routine,
        List<LeanStop> stops,
        List<GuideView.WordView> words) {
    /**
     * A stop.
     *
     * @param pages how it is laid out: {@code one}, {@code two}, or {@code flow} while that is not known
     * @param pictures those that half a sheet is wide enough for
     * @param back whether the rabbit lies on its back
     */
    record LeanStop(GuideView.StopView stop, String pages, List<GuideView.PictureView> pictures, boolean back) {}
}
