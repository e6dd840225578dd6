package hutchleaf.contest;

import hutchleaf.model.ScoreSheet;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a score sheet gives for answers.
 *
 * @param asked questions that count, 1 or more
 * @param each most points for one of them, 1 or more
 */
public record QuestionMarks(int asked, int each) {
    /** How the row of the score sheet that these are read from is named. */
    public static final String ITEM = "Questions";

    /** How that row is written: {@code five, two points each}. */
    private static final Pattern FORM = Pattern.compile("(?<asked>\\w+), (?<each>\\w+) points? each");

    /** Reads the sheet's row; empty when there is none, or its words do not give its points. */
    public static Optional<QuestionMarks> of(ScoreSheet sheet) {
        return sheet.items().stream()
                .filter(item -> item.name().equalsIgnoreCase(ITEM))
                .findFirst()
                .flatMap(item -> read(item.lookingFor()).filter(marks -> marks.points() == item.points()));
    }

    static Optional<QuestionMarks> read(String words) {
        Matcher form = FORM.matcher(words);
        if (!form.matches()) {
            return Optional.empty();
        }
        return CountingWord.parse(form.group("asked"))
                .flatMap(asked -> CountingWord.parse(form.group("each")).map(each -> new QuestionMarks(asked, each)));
    }

    /** Points of all answers together. */
    public int points() {
        return asked * each;
    }

    /**
     * Points for an answer: all of them when it holds enough, in step with what it holds below that, at least 1 for
     * something right.
     *
     * @param ticks points of the answer that were said, 0 or more
     * @param enough how many a full answer must hold, 1 or more
     */
    public int awarded(int ticks, int enough) {
        if (ticks >= enough) {
            return each;
        }
        return ticks == 0 ? 0 : Math.max(1, each * ticks / enough);
    }
}
