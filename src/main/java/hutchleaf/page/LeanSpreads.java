package hutchleaf.page;

import java.util.ArrayList;
import java.util.List;

/** Which stops of a lean guide take two facing pages. The first stop starts on an even page, so at the left. */
final class LeanSpreads {
    private LeanSpreads() {}

    /**
     * Two pages that face each other start at the left. Where a long stop would start at the right, the one before it gets
     * two pages too, so that no page stays empty.
     *
     * @param tooLong for each stop in order, whether one page is too small for it
     * @return for each stop, whether it takes two pages
     */
    static List<Boolean> of(List<Boolean> tooLong) {
        List<Boolean> two = new ArrayList<>();
        boolean left = true;
        for (boolean needsTwo : tooLong) {
            if (needsTwo && !left) {
                two.set(two.size() - 1, true);
                left = true;
            }
            two.add(needsTwo);
            left = needsTwo == left;
        }
        return two;
    }
}
