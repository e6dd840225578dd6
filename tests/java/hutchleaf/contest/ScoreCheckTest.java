package hutchleaf.contest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.model.Level;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.ScoreSheet.Block;
import hutchleaf.model.ScoreSheet.Item;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

final class ScoreCheckTest {
    private final Problems problems = new Problems();

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "PRIMARY")
    void theEmbeddedWeightsAddUpToAHundred(Level level) {
        int sum = 0;
        for (Block block : sheet(level).blocks()) {
            sum += block.hands() + block.voice();
        }
        for (Item item : sheet(level).items()) {
            sum += item.points();
        }

        assertThat(sum).isEqualTo(100).isEqualTo(sheet(level).total());
    }

    @Test
    void theEmbeddedSheetsGiveNoProblem() {
        ScoreCheck.check(Samples.library().contest().scoreSheets(), problems);

        assertThat(problems.sorted()).isEmpty();
    }

    /** Shares by groups of published cards, typed from them: C01, C02 and C03; C06 for the upper limits. */
    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "PRIMARY")
    void theEmbeddedCardKeepsToPublishedShares(Level level) {
        ScoreSheet sheet = sheet(level);

        // C01, C02, C03: carry, pose, turn over and control take 0.15 to 0.30.
        assertThat(points(sheet, Set.of("A", "B")) + item(sheet, "Care and control"))
                .isBetween(0.15 - 0.10, 0.30 + 0.10);
        // C01, C02, C03: the examination, ears to fur, takes 0.30 to 0.52; fur is F's hands.
        double fur = sheet.blocks().get(5).hands() / 100.0;
        assertThat(points(sheet, Set.of("C", "D", "E")) + fur).isBetween(0.30 - 0.10, 0.52 + 0.10);
        // C01, C02: comments and close take 0.06 to 0.15.
        assertThat(sheet.blocks().get(5).voice() / 100.0).isBetween(0.0, 0.15 + 0.10);
        // C02, C03 give appearance and the questions 0.10 each; C06 allows no more than 0.10 and 0.20.
        assertThat(item(sheet, "Appearance")).isBetween(0.05, 0.10);
        assertThat(item(sheet, "Questions")).isCloseTo(0.10, within(0.05)).isLessThanOrEqualTo(0.20);
    }

    @Test
    void aHeavyBlockIsWarnedOfWithTheRange() {
        ScoreCheck.warn(
                edited(block -> block.letter().equals("B") ? weighted(block, 40, 2) : block, item -> item), problems);

        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .containsExactly(
                        "warning: content/contest/scoresheet.md:9: junior gives block B (Both turns) 32.3 % of the points;"
                                + " cards in print give 5 % to 10 % (C01, C04); keep it between 2.5 % and 20 %, or know"
                                + " why not",
                        "warning: content/contest/scoresheet.md:9: junior gives carry, pose, turns and control 49.2 % of the"
                                + " points; cards in print give 15 % to 30 % (C01, C02, C03, C04); keep it between 5 % and"
                                + " 40 %, or know why not");
    }

    @Test
    void pointsForDressAboveTheCapAreWarnedOf() {
        ScoreCheck.warn(
                edited(
                        block -> block,
                        item -> item.name().equals("Appearance") ? new Item(item.name(), item.lookingFor(), 13) : item),
                problems);

        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .containsExactly(
                        "warning: content/contest/scoresheet.md:9: junior gives Appearance 12.3 % of the points; one"
                                + " standard allows 10 % (C06); give it less, or know why not");
    }

    @Test
    void aStopInTwoBlocksOrInNoneIsAnError() {
        ScoreSheet wrong = edited(
                block -> block.letter().equals("D")
                        ? new Block("D", block.name(), List.of(9, 13), block.lookingFor(), block.hands(), block.voice())
                        : block,
                item -> item);

        ScoreCheck.check(List.of(wrong), problems);

        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .containsExactly(
                        "content/contest/scoresheet.md:9: junior: stop 11 stands in 0 blocks; score each stop in one",
                        "content/contest/scoresheet.md:9: junior: stop 13 stands in 2 blocks; score each stop in one");
    }

    @Test
    void aBlockWithoutPointsAndAFifthOfSixBlocksAreErrors() {
        ScoreSheet junior = sheet(Level.JUNIOR);
        List<Block> five = junior.blocks().subList(0, 5);
        ScoreSheet wrong = new ScoreSheet(
                Level.JUNIOR,
                junior.at(),
                five.stream()
                        .map(block -> block.letter().equals("A") ? weighted(block, 0, 4) : block)
                        .toList(),
                junior.items());

        ScoreCheck.check(List.of(wrong), problems);

        assertThat(problems.sorted())
                .extracting(Problem::what)
                .contains(
                        "junior: the blocks are A, B, C, D, E",
                        "junior: block A, hands gives 0 points",
                        "junior: stop 15 stands in 0 blocks");
    }

    @Test
    void questionsThatDoNotMakeTheirPointsAreAnError() {
        ScoreSheet wrong = edited(
                block -> block,
                item -> item.name().equals("Questions") ? new Item("Questions", "five, two points each", 12) : item);

        ScoreCheck.check(List.of(wrong), problems);

        assertThat(problems.sorted())
                .extracting(Problem::toString)
                .containsExactly(
                        "content/contest/scoresheet.md:9: junior: 'five, two points each' makes 10 points, its row gives"
                                + " 12; make them agree");
    }

    private static ScoreSheet sheet(Level level) {
        return Samples.library().contest().sheetFor(level).orElseThrow();
    }

    private static ScoreSheet edited(UnaryOperator<Block> blocks, UnaryOperator<Item> items) {
        ScoreSheet junior = sheet(Level.JUNIOR);
        return new ScoreSheet(
                Level.JUNIOR,
                junior.at(),
                junior.blocks().stream().map(blocks).toList(),
                junior.items().stream().map(items).toList());
    }

    private static Block weighted(Block block, int hands, int voice) {
        return new Block(block.letter(), block.name(), block.stops(), block.lookingFor(), hands, voice);
    }

    private static double points(ScoreSheet sheet, Set<String> letters) {
        return sheet.blocks().stream()
                        .filter(block -> letters.contains(block.letter()))
                        .mapToInt(block -> block.hands() + block.voice())
                        .sum()
                / 100.0;
    }

    private static double item(ScoreSheet sheet, String name) {
        return sheet.items().stream()
                        .filter(item -> item.name().equals(name))
                        .mapToInt(Item::points)
                        .sum()
                / 100.0;
    }
}
