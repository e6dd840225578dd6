package hutchleaf.press;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** The levels of headings when some are left out: they start at H1 and skip none (ISO 14289-1, 7.4.2). */
final class Headings {
    private Headings() {}

    /**
     * Names each heading by how deep it stands below those before it. Headings that skip no level keep theirs.
     *
     * @param tags in reading order
     */
    static void level(List<COSDictionary> tags) {
        Deque<Integer> above = new ArrayDeque<>();
        for (COSDictionary tag : tags) {
            String name = tag.getNameAsString(COSName.S, "");
            if (name.matches("H[1-6]")) {
                int level = name.charAt(1) - '0';
                while (!above.isEmpty() && above.peek() >= level) {
                    above.pop();
                }
                above.push(level);
                tag.setName(COSName.S, "H" + above.size());
            }
        }
    }
}
