package hutchleaf.page;

import hutchleaf.contest.CountingWord;
import hutchleaf.contest.QuestionMarks;
import hutchleaf.contest.QuestionSet;
import hutchleaf.edition.Edition;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.page.QuestionsView.Marks;
import hutchleaf.page.QuestionsView.QuestionView;
import hutchleaf.page.QuestionsView.SetView;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Makes the view of the question sets, with the words that tell how answers are scored. */
final class QuestionPages {
    private final Map<String, Integer> guidePages;
    private final Optional<QuestionMarks> marks;
    private final Markup markup;

    private QuestionPages(Edition edition, Map<String, Integer> guidePages) {
        this.guidePages = guidePages;
        this.marks = edition.library().contest().sheetFor(edition.level()).flatMap(QuestionMarks::of);
        this.markup = Markup.unlinked(edition);
    }

    /**
     * The view of all sets.
     *
     * @param guidePages the page of the guide on which each topic starts, by its anchor
     */
    static QuestionsView of(Edition edition, Look look, List<QuestionSet> sets, Map<String, Integer> guidePages) {
        return of(edition, look, sets, guidePages, 1);
    }

    /**
     * The same for a class that takes several grids.
     *
     * @param grids for how many the first set is printed, since a page has boxes for the contestants of one
     */
    static QuestionsView of(
            Edition edition, Look look, List<QuestionSet> sets, Map<String, Integer> guidePages, int grids) {
        return new QuestionPages(edition, guidePages).view(look, sets, grids);
    }

    private QuestionsView view(Look look, List<QuestionSet> sets, int grids) {
        int inSet = sets.stream()
                .mapToInt(set -> set.questions().size())
                .findFirst()
                .orElse(0);
        return new QuestionsView(
                look,
                marks.map(found -> new Marks(ask(found.asked(), inSet), scale(found.each()))),
                CountingWord.of(sets.size()),
                IntStream.range(0, sets.size())
                        .boxed()
                        .flatMap(index -> pages(sets.get(index), index == 0 ? grids : 1))
                        .toList());
    }

    private Stream<SetView> pages(QuestionSet set, int grids) {
        return IntStream.rangeClosed(1, grids)
                .mapToObj(grid ->
                        set(set, Optional.of("grid " + grid + " of " + grids).filter(words -> grids > 1)));
    }

    private SetView set(QuestionSet set, Optional<String> grid) {
        return new SetView(
                set.letter(),
                grid,
                IntStream.range(0, set.questions().size())
                        .mapToObj(index -> question(index + 1, set.questions().get(index)))
                        .toList());
    }

    private QuestionView question(int no, QuestionSet.Asked asked) {
        JudgeQuestion question = asked.question();
        return new QuestionView(
                no,
                markup.write(question.question()),
                need(question),
                markup.writeAll(question.points()),
                asked.topic().station(),
                Optional.ofNullable(guidePages.get(asked.topic().anchor())));
    }

    /** {@code Ask everyone in a class the same five; six is a spare.} */
    private static String ask(int asked, int inSet) {
        String same = "Ask everyone in a class the same " + CountingWord.of(asked);
        return switch (Integer.signum(inSet - asked - 1)) {
            case -1 -> same + ".";
            case 0 -> same + "; question " + inSet + " is a spare.";
            default -> same + "; the rest are spares.";
        };
    }

    /** {@code Two points each: two or more ticks is 2, one tick is 1.} */
    private static String scale(int each) {
        List<String> steps = new ArrayList<>();
        for (int points = each; points >= 1; points--) {
            String word = CountingWord.of(points);
            String ticks = points == 1 ? " tick" : points == each ? " or more ticks" : " ticks";
            steps.add(word + ticks + " is " + points);
        }
        String head = CountingWord.of(each);
        return Character.toUpperCase(head.charAt(0)) + head.substring(1) + (each == 1 ? " point" : " points")
                + " each: " + String.join(", ", steps) + ".";
    }

    /** {@code any 3: three ticks is 2, one or two is 1}; the scale only where it is not the common one. */
    private String need(JudgeQuestion question) {
        int enough = question.enough();
        int all = question.points().size();
        String need = enough < all ? "any " + enough : all == 2 ? "both" : all == 1 ? "" : "all " + all;
        String own = marks.filter(found -> found.each() != enough)
                .map(found -> ownScale(found, enough))
                .orElse("");
        return need.isEmpty() || own.isEmpty() ? need + own : need + ": " + own;
    }

    private static String ownScale(QuestionMarks marks, int enough) {
        List<String> steps = new ArrayList<>();
        steps.add(CountingWord.of(enough) + (enough == 1 ? " tick is " : " ticks is ") + marks.each());
        for (int points = marks.each() - 1; points >= 1; points--) {
            int step = points;
            List<Integer> ticks = IntStream.range(1, enough)
                    .filter(count -> marks.awarded(count, enough) == step)
                    .boxed()
                    .toList();
            if (!ticks.isEmpty()) {
                steps.add(run(ticks) + " is " + points);
            }
        }
        return String.join(", ", steps);
    }

    /** {@code one}, {@code one or two}, {@code one to three}. */
    private static String run(List<Integer> numbers) {
        String first = CountingWord.of(numbers.get(0));
        String last = CountingWord.of(numbers.get(numbers.size() - 1));
        return switch (numbers.size()) {
            case 1 -> first;
            case 2 -> first + " or " + last;
            default -> first + " to " + last;
        };
    }
}
