package hutchleaf.press;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Saves ink on a painted page without moving anything: every rule gets as thin as the thinnest on the page, and letters
 * lose a little of their edge, as a white line along it.
 */
final class SavedPage {
    /** How the engine paints the side of a box, or a rule: four corners, filled. */
    private static final Pattern SIDE =
            Pattern.compile("(?m)^(\\S+) (\\S+) m\\n(\\S+) (\\S+) l\\n(\\S+) (\\S+) l\\n(\\S+) (\\S+) l\\nh\\nf\\n");

    /** How it paints words; glyph numbers stand in brackets that hold no line's end. */
    private static final Pattern WORDS = Pattern.compile("(?m)^BT\\n(/\\S+ )(\\S+)( Tf\\n)((?:(?!ET\\n).*\\n)*)ET\\n");

    /** What is thicker is no rule: points. */
    private static final double THICKEST_RULE = 3.2;

    /** No rule gets thinner than this, 0.9 pt, or what the page's own thinnest one has. */
    private static final double LEAST = 0.9;

    private static final double ROUNDING = 0.05;

    /**
     * The line along a letter's edge, as a share of its size; half of it lies on the letter. Twice as much takes the tails
     * off commas.
     */
    private static final double EDGE = 0.012;

    private SavedPage() {}

    /** Rewrites a page's content. */
    static void thin(COSDictionary page) throws IOException {
        if (page.getDictionaryObject(COSName.CONTENTS) instanceof COSStream old) {
            String content = Backdrop.read(old);
            page.setItem(COSName.CONTENTS, Backdrop.write(letters(rules(content))));
        }
    }

    private static String letters(String content) {
        return WORDS.matcher(content).replaceAll(words -> {
            double width = Double.parseDouble(words.group(2)) * EDGE;
            return Matcher.quoteReplacement(String.format(
                    Locale.ROOT,
                    "q\n1 G\n1 j\n%.4f w\n2 Tr\nBT\n%s%s%s%sET\nQ\n",
                    width,
                    words.group(1),
                    words.group(2),
                    words.group(3),
                    words.group(4)));
        });
    }

    private static String rules(String content) {
        OptionalDouble thinnest = SIDE.matcher(content)
                .results()
                .mapToDouble(side -> Side.of(side).thickness())
                .filter(thick -> thick >= LEAST - ROUNDING)
                .min();
        if (thinnest.isEmpty()) {
            return content;
        }
        double least = thinnest.getAsDouble();
        return SIDE.matcher(content).replaceAll(found -> {
            Side side = Side.of(found);
            boolean thick = side.thickness() > least + ROUNDING && side.thickness() <= THICKEST_RULE;
            return Matcher.quoteReplacement(thick ? side.thinned(least).painted() : found.group());
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

        /** The same side, thinner: where its corners are mitred its outer edge stays, else its middle. */
        Side thinned(double thickness) {
            boolean firstLong = edge(0) + edge(2) > edge(1) + edge(3);
            int first = firstLong ? 0 : 1;
            double keep = 1 - thickness / thickness();
            double one = edge(first);
            double other = edge(first + 2);
            double[] moved = Arrays.copyOf(at, at.length);
            double outer = Math.abs(one - other) < ROUNDING ? keep / 2 : one > other ? 0 : keep;
            // Each long edge moves along the short ones, by its part of what is taken off.
            move(moved, first, (first + 3) % 4, outer);
            move(moved, (first + 1) % 4, first + 2, outer);
            move(moved, first + 2, (first + 1) % 4, keep - outer);
            move(moved, (first + 3) % 4, first, keep - outer);
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
