package hutchleaf.press;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * Where a line may break: where the JDK's iterator says so, save inside what belongs together (Unicode Standard Annex 14:
 * LB19 quotation marks, LB13 closing punctuation, LB25 numbers). The JDK's rules are older and break after an apostrophe,
 * a degree sign and the stroke of a fraction.
 */
final class LineBreaks implements FSTextBreaker {
    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ENGLISH);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        breaks.setText(newText);
    }

    /** The next place at which a line may break; {@link BreakIterator#DONE} after the last. */
    @Override
    public int next() {
        int place = breaks.next();
        while (place != BreakIterator.DONE && place < text.length() && together(place)) {
            place = breaks.next();
        }
        return place;
    }

    private boolean together(int place) {
        if (place == 0) {
            return false;
        }
        char before = text.charAt(place - 1);
        char after = text.charAt(place);
        return switch (before) {
            case '\u2019', '\'' -> Character.isLetterOrDigit(after);
            case '\u00B0' -> Character.isLetter(after);
            case '/' -> Character.isDigit(after) && place > 1 && Character.isDigit(text.charAt(place - 2));
            default -> false;
        };
    }
}
