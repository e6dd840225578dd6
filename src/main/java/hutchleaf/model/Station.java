package hutchleaf.model;

/**
 * One stop of the routine.
 *
 * @param no 1 to 16
 * @param doing what the hands do, for the page that shows the whole routine
 * @param saying what the voice says there
 * @param pocket key words for the pocket version
 */
public record Station(
        int no, String name, String shortName, SideUp sideUp, String doing, String saying, String pocket) {
    /** How the rabbit lies at the stop when the whole routine is shown. */
    public enum SideUp {
        UPRIGHT,
        BACK
    }
}
