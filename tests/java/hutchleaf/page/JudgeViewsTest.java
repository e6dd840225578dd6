package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.contest.QuestionSet;
import hutchleaf.contest.QuestionSet.Asked;
import hutchleaf.contest.Samples;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Library;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.ScoreSheet.Block;
import hutchleaf.model.Setting;
import hutchleaf.model.WentWell;
import hutchleaf.model.Words;
import hutchleaf.page.QuestionsView.Marks;
import hutchleaf.page.QuestionsView.QuestionView;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class JudgeViewsTest {
    private final Problems problems = new Problems();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            JUNIOR | Ask everyone in a class the same five; question 6 is a spare. | Two points each: two or more ticks is 2, one tick is 1.
            INTERMEDIATE | Ask everyone in a class the same six. | Two points each: two or more ticks is 2, one tick is 1.
            SENIOR | Ask everyone in a class the same five; question 6 is a spare. | Three points each: three or more ticks is 3, two ticks is 2, one tick is 1.
            """)
    void theHeadSaysHowPointsAreGivenAsTheScoreSheetCountsThem(Level level, String ask, String scale) {
        assertThat(questions(level).scoring()).contains(new Marks(ask, scale));
    }

    @Test
    void primaryHasNoPoints() {
        assertThat(questions(Level.PRIMARY).scoring()).isEmpty();
        assertThat(needs(Level.PRIMARY)).contains("any 1").noneMatch(need -> need.contains(" is "));
    }

    @Test
    void aQuestionWithAnotherNumberOfPointsToNameHasItsOwnScale() {
        assertThat(needs(Level.JUNIOR))
                .containsExactly(
                        "both", "all 3: three ticks is 2, one or two is 1", "any 1: one tick is 2", "one tick is 2");
        assertThat(needs(Level.SENIOR))
                .containsExactly("both: two ticks is 3, one is 1", "all 3", "any 1: one tick is 3", "one tick is 3");
    }

    @Test
    void aQuestionNamesItsStopAndItsPageOfTheGuide() {
        QuestionView first = questions(Level.JUNIOR).sets().get(0).questions().get(0);

        assertThat(first.stop()).contains(1);
        assertThat(first.page()).contains(46);
        assertThat(questions(Level.JUNIOR).sets().get(0).questions().get(3).page())
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theBlocksOfASheetMeetAndHoldTheirNumberBoxes(Paper paper) {
        Edition edition = edition(Level.INTERMEDIATE);
        ScoreSheet sheet = sheet(Level.INTERMEDIATE);

        ScoreView view = ScorePages.of(edition, sheet, paper, Setting.ORDINARY, "", problems)
                .orElseThrow();

        double top = 51.2;
        for (ScoreView.BlockView block : view.blocks()) {
            assertThat(block.at().top()).as(block.letter()).isCloseTo(top, within());
            assertThat(block.at().height()).as(block.letter()).isGreaterThan(13.4 + 2);
            top += block.at().height();
        }
        assertThat(view.at().itemsTop()).isCloseTo(top, within());
        // The box of a row is 1.3 mm lower than the row.
        assertThat(view.at().itemHeight()).isBetween(8 + 1.3, 11.4);
        assertThat(view.at().footTop()).isCloseTo(top + 3 * view.at().itemHeight(), within());
    }

    @Test
    void aSheetWhoseWordsNeedMoreThanThePageIsRefusedAtItsLine() {
        ScoreSheet junior = sheet(Level.JUNIOR);
        String long200 = String.join(" ", Collections.nCopies(25, "safely;"));
        ScoreSheet wordy = new ScoreSheet(
                Level.JUNIOR,
                junior.at(),
                junior.blocks().stream()
                        .map(block -> new Block(
                                block.letter(), block.name(), block.stops(), long200, block.hands(), block.voice()))
                        .toList(),
                junior.items());

        assertThat(ScorePages.of(edition(Level.JUNIOR), wordy, Paper.LETTER, Setting.ORDINARY, "", problems))
                .isEmpty();
        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .singleElement()
                .asString()
                .startsWith("content/contest/scoresheet.md:9: junior: the sheet is ")
                .endsWith(" mm too high; shorten what the longest blocks look for: 29 letters make a line of 4 mm");
    }

    @Test
    void theGridShortensNamesAndKeepsStopsAndWhatCostsNothing() {
        GridView view = GridPages.of(edition(Level.JUNIOR), sheet(Level.JUNIOR), Paper.LETTER);

        assertThat(view.blocks())
                .extracting(GridView.Row::name)
                .containsExactly(
                        "Arrive, introduce", "Both turns", "Head", "Feet and legs", "Underside, tail", "Coat, close");
        assertThat(view.blocks().get(1).lines()).containsExactly("5 turn over, 14 turn back", "a helper costs nothing");
        assertThat(view.blocks().get(2).lines()).containsExactly("4 ears, 6 eyes, 7 nose,", "8 teeth");
        assertThat(view.items()).extracting(GridView.Item::letters).containsExactly("Ap", "Ca", "Qu");
    }

    @Test
    void primaryHasNoScoreSheetAndThatIsNoProblem() {
        Publications publications = publications(Paper.LETTER);

        assertThat(publications.scoreSheet(edition(Level.PRIMARY), "", problems))
                .isEmpty();
        assertThat(publications.scoreGrid(edition(Level.PRIMARY), problems)).isEmpty();
        assertThat(problems.sorted()).isEmpty();
    }

    @Test
    void aSlipWithTooManyLinesIsRefused() {
        Library all = Samples.library();
        Library.Contest contest = all.contest();
        WentWell nine = new WentWell(
                "What went well",
                Place.whole("content/contest/went-well.md"),
                Collections.nCopies(9, Words.of("I was kind.")));
        Library changed = new Library(
                all.topics(),
                all.routine(),
                new Library.Contest(
                        contest.scoreSheets(),
                        contest.blueprint(),
                        contest.divisions(),
                        nine,
                        contest.packet(),
                        contest.help()),
                all.tables(),
                all.wording());

        Optional<WentWellView> view = WentWellPages.of(
                Edition.of(changed, Level.PRIMARY, new Problems()), Look.of(Level.PRIMARY, Paper.LETTER), "", problems);

        assertThat(view).isEmpty();
        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .containsExactly(
                        "content/contest/went-well.md: the slip has room for 8 lines to tick, these take 9; keep"
                                + " five to seven, each up to 33 letters");
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.api.Assertions.within(0.01);
    }

    static Publications publications(Paper paper) {
        return new Publications(Templates.embedded(), paper, "en-US");
    }

    /** Questions with two, three, four and one points to name, of which two, three, one and one are enough. */
    static List<QuestionSet> sets(Edition edition) {
        List<Asked> asked = edition.library().topics().stream()
                .limit(1)
                .flatMap(topic ->
                        topic.practice().questions().stream().map(question -> new Asked(question, topic.head())))
                .toList();
        Asked elsewhere = new Asked(
                asked.get(7).question(), edition.library().topics().get(1).head());
        return List.of(new QuestionSet("A", List.of(asked.get(0), asked.get(1), asked.get(2), elsewhere)));
    }

    private static QuestionsView questions(Level level) {
        Edition edition = edition(level);
        List<QuestionSet> sets = sets(edition);
        List<Asked> four = sets.get(0).questions();
        QuestionSet six = new QuestionSet(
                "A", List.of(four.get(0), four.get(1), four.get(2), four.get(3), four.get(0), four.get(1)));
        return QuestionPages.of(
                edition, Look.of(edition.level(), Paper.LETTER), List.of(six), Map.of("routine-sample-1", 46));
    }

    private static List<String> needs(Level level) {
        return questions(level).sets().get(0).questions().stream()
                .limit(4)
                .map(QuestionView::need)
                .toList();
    }

    private static Edition edition(Level level) {
        return Samples.edition(level, 8, Levels.ALL);
    }

    private static ScoreSheet sheet(Level level) {
        return Samples.library().contest().sheetFor(level).orElseThrow();
    }
}
