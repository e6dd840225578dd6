package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * What the templates of the talk-through sheet and the cue card see.
 *
 * @param name the member's; empty where it is written in by hand
 * @param foot what stands at the foot of every page
 * @param before what to ask before the day
 * @param member what the member keeps to
 * @param helper what the helper keeps to
 * @param minute whether stops are shown with the rabbit on its back
 */
record HelpView(
        Look look,
        String name,
        String foot,
        List<Xml> before,
        List<Xml> member,
        List<Xml> helper,
        boolean minute,
        List<StopView> stops) {
    /**
     * A stop.
     *
     * @param say what the member says to the helper
     * @param helper what the helper minds
     * @param lookFor what the member looks for
     * @param names what a finding is called, by the stop's own table; absent where it has none
     * @param judge what the member says to the judge
     * @param key words of the cue card
     * @param place where its words are written
     */
    record StopView(
            int no,
            String name,
            String shortName,
            Xml say,
            Xml helper,
            Xml lookFor,
            Optional<String> names,
            Xml judge,
            Xml caution,
            String key,
            String place) {}
}
