package hutchleaf.press;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/** Saves ink on a painted page without moving anything: every rule gets as thin as one may be. */
final class SavedPage {
    /** How the engine paints the side of a box, or a rule: four corners, filled. */
    private static final Pattern SIDE =
            Pattern.compile("(?m)^(\\S+) (\\S+) m\\n(\\S+) (\\S+) l\\n(\\S+) (\\S+) l\\n(\\S+) (\\S+) l\\nh\\nf\\n");

    /** What is thicker is no rule: points. */
    private static final double THICKEST_RULE = 3.2;

    /** Points; what is thinner does not live through two copies. */
    private static final double THINNEST = 0.9;

    private static final double ROUNDING = 0.05;

    private SavedPage() {}

    /** Rewrites a page's content. */
    static void thin(COSDictionary page) throws IOException {
        if (page.getDictionaryObject(COSName.CONTENTS) instanceof COSStream old) {
            String content = Backdrop.read(old);
            page.setItem(COSName.CONTENTS, Backdrop.write(rules(content)));
        }
    }

    private static String rules(String content) {
        return SIDE.matcher(content).replaceAll(found -> {
            Side side = Side.of(found);
            boolean thick = side.thickness() > THINNEST + ROUNDING && side.thickness() <= THICKEST_RULE;
            return Matcher.quoteReplacement(thick ? side.thinned(THINNEST).painted() : found.group());
        });
    }

    /** The corners of a side in the order in which they are painted: x, y of each. */
    private static final class Side {
        private final double[] at;

        private Side(double[] at) {
            this.at = at;
        }

        static Side of(MatchResult found) {
            double[] at = new double[8];
            for (int i = 0; i < at.length; i++) {
                at[i] = Double.parseDouble(found.group(i + 1));
            }
            return new Side(at);
        }

        private double edge(int from) {
            int to = (from + 1) % 4;
            return Math.hypot(at[2 * to] - at[2 * from], at[2 * to + 1] - at[2 * from + 1]);
        }

        /** Across its two long edges, which are parallel. */
        double thickness() {
            double high = extent(0);
            double wide = extent(1);
            return Math.min(high, wide);
        }

        private double extent(int axis) {
            double least = Math.min(Math.min(at[axis], at[axis + 2]), Math.min(at[axis + 4], at[axis + 6]));
            double most = Math.max(Math.max(at[axis], at[axis + 2]), Math.max(at[axis + 4], at[axis + 6]));
            return most - least;
        }

        /** The same side, thinner, about its own middle: boxes that share a line share it still. */
        Side thinned(double thickness) {
            boolean firstLong = edge(0) + edge(2) > edge(1) + edge(3);
            int first = firstLong ? 0 : 1;
            double share = (1 - thickness / thickness()) / 2;
            double[] moved = Arrays.copyOf(at, at.length);
            // Each long edge moves along the short ones.
            move(moved, first, (first + 3) % 4, share);
            move(moved, (first + 1) % 4, first + 2, share);
            move(moved, first + 2, (first + 1) % 4, share);
            move(moved, (first + 3) % 4, first, share);
            return new Side(moved);
        }

        private void move(double[] moved, int corner, int towards, double share) {
            for (int axis = 0; axis < 2; axis++) {
                double from = at[2 * corner + axis];
                moved[2 * corner + axis] = from + (at[2 * towards + axis] - from) * share;
            }
        }

        String painted() {
            return String.format(
                    Locale.ROOT,
                    "%.4f %.4f m\n%.4f %.4f l\n%.4f %.4f l\n%.4f %.4f l\nh\nf\n",
                    at[0],
                    at[1],
                    at[2],
                    at[3],
                    at[4],
                    at[5],
                    at[6],
                    at[7]);
        }
    }
}
