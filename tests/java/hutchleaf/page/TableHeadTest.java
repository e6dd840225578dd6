package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Block;
import hutchleaf.model.Level;
import hutchleaf.model.Words;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Heads of tables in the finished guides: none stands at the foot of a page without two rows under it. */
final class TableHeadTest {
    /** Words whose baselines differ by less than this stand on one line: mm. */
    private static final double LINE = 0.4;

    @ParameterizedTest
    @EnumSource(Level.class)
    void noTableHeadStandsWithoutTwoRows(Level level) {
        Map<Integer, List<Word>> pages = PdfWords.of(RealTree.bytes(RealTree.guide(level, Paper.LETTER))).stream()
                .collect(Collectors.groupingBy(Word::page, TreeMap::new, Collectors.toList()));
        int heads = 0;
        for (Block.Table table : tables(level)) {
            String head = table.head().stream().map(Words::plain).collect(Collectors.joining(" "));
            for (List<Word> words : pages.values()) {
                for (List<Word> line : lines(words)) {
                    int start = start(line, head);
                    if (start >= 0) {
                        heads++;
                        Word first = line.get(start);
                        assertThat(words.stream()
                                        .filter(word -> word.y() > first.y() + LINE)
                                        .filter(word -> Math.abs(word.x() - first.x()) < LINE)
                                        .map(word -> Math.round(word.y() * 2))
                                        .distinct())
                                .as("rows under the head '%s' on page %d", head, first.page())
                                .hasSizeGreaterThanOrEqualTo(
                                        Math.min(2, table.rows().size()));
                    }
                }
            }
        }
        assertThat(heads).as("heads found").isGreaterThan(level == Level.PRIMARY ? 4 : 20);
    }

    private static List<Block.Table> tables(Level level) {
        return RealTree.edition(level)
                .all()
                .flatMap(leaf -> leaf.sections().stream())
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Table.class::isInstance)
                .map(Block.Table.class::cast)
                .toList();
    }

    private static List<List<Word>> lines(List<Word> words) {
        List<Word> sorted = words.stream()
                .sorted(Comparator.comparingDouble(Word::y).thenComparingDouble(Word::x))
                .toList();
        List<List<Word>> lines = new ArrayList<>();
        for (Word word : sorted) {
            boolean same = !lines.isEmpty()
                    && Math.abs(lines.get(lines.size() - 1).get(0).y() - word.y()) < LINE;
            if (!same) {
                lines.add(new ArrayList<>());
            }
            lines.get(lines.size() - 1).add(word);
        }
        lines.forEach(line -> line.sort(Comparator.comparingDouble(Word::x)));
        return lines;
    }

    /** Where on the line the head starts, when the line ends with it; the rail's heading may stand before. */
    private static int start(List<Word> line, String head) {
        for (int from = 0; from < line.size(); from++) {
            String rest =
                    line.subList(from, line.size()).stream().map(Word::text).collect(Collectors.joining(" "));
            if (rest.equals(head)) {
                return from;
            }
        }
        return -1;
    }
}
