package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.contest.QuestionSets;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Setting;
import hutchleaf.press.CopiedPage;
import hutchleaf.press.CopiedPage.Copier;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Leaders copy what they printed, and copy the copy: pages of every publication at every level stay readable. How a copy
 * comes out is common practice, no source.
 */
final class PageCopyTest {
    /** A publication of one level. */
    private interface Kind extends Function<Level, Printed> {}

    private static final Map<String, Kind> KINDS = Map.ofEntries(
            Map.entry("guide", level -> RealTree.guide(level, Paper.LETTER)),
            Map.entry("lean guide", level -> RealTree.leanGuide(level, Paper.LETTER)),
            Map.entry("deck", level -> RealTree.deck(level, Paper.LETTER)),
            Map.entry("labels", level -> RealTree.labelIt(level, Paper.LETTER)),
            Map.entry("questions", PageCopyTest::questions),
            Map.entry("score sheet", level -> RealTree.scoreSheet(level, Paper.LETTER)),
            Map.entry("score grid", PageCopyTest::grid),
            Map.entry("talk-through", level -> RealTree.talkThrough(level, Setting.ORDINARY)),
            Map.entry("cue card", level -> RealTree.cueCard(level, Paper.LETTER, Setting.ORDINARY)),
            Map.entry("what went well", PageCopyTest::wentWell));

    private static Printed questions(Level level) {
        Problems problems = new Problems();
        Edition edition = RealTree.edition(level);
        return RealTree.print(RealTree.publications(Paper.LETTER)
                .questions(edition, QuestionSets.draw(edition, 1, 1, problems), Map.of(), problems));
    }

    private static Printed grid(Level level) {
        return RealTree.print(RealTree.publications(Paper.LETTER).scoreGrid(RealTree.edition(level), new Problems()));
    }

    private static Printed wentWell(Level level) {
        return RealTree.print(
                RealTree.publications(Paper.LETTER).wentWell(RealTree.edition(level), "A Club", new Problems()));
    }

    static Stream<Arguments> publications() {
        return KINDS.keySet().stream()
                .sorted()
                .flatMap(kind -> Stream.of(Level.values())
                        .filter(level -> kind.startsWith("score") ? level != Level.PRIMARY : true)
                        .filter(level -> kind.startsWith("what") ? level == Level.PRIMARY : true)
                        .map(level -> Arguments.of(kind, level)));
    }

    @ParameterizedTest
    @MethodSource("publications")
    void aCopyOfACopyLosesNoWordAndNoRule(String kind, Level level) {
        Printed printed = Objects.requireNonNull(KINDS.get(kind), kind).apply(level);
        int pages = printed.pages();
        // The first pages differ most; then one from each part.
        TreeSet<Integer> looked = new TreeSet<>(List.of(1, Math.min(2, pages), Math.max(1, pages - 1)));
        if (kind.endsWith("guide")) {
            looked.addAll(List.of(5, 8, pages / 2));
        }
        assertThat(CopiedPage.lost(RealTree.bytes(printed), Copier.A_COPY_OF_A_COPY, List.copyOf(looked)))
                .as("%s, %s", kind, level.word())
                .isEmpty();
    }
}
