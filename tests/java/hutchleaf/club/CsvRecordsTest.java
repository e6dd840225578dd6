package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180 (2005) section 2, rule by rule, with erratum 5714 (no space after a closing quote); then what we add to it. */
final class CsvRecordsTest {
    private static final String ABC = "aaa,bbb,ccc";
    private static final String ZYX = "zzz,yyy,xxx";
    private static final List<List<String>> BOTH = List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));

    private static List<List<String>> cells(String text) {
        return CsvRecords.read(text, ',').stream().map(CsvRecords.Line::cells).toList();
    }

    @Test
    void rule1EachRecordStandsOnALineOfItsOwn() {
        assertThat(cells(ABC + "\r\n" + ZYX + "\r\n")).isEqualTo(BOTH);
    }

    @Test
    void rule2TheLastRecordMayHaveNoLineEnd() {
        assertThat(cells(ABC + "\r\n" + ZYX)).isEqualTo(BOTH);
    }

    @Test
    void rule4SpacesBelongToTheCell() {
        assertThat(cells("a, b \r\n")).containsExactly(List.of("a", " b "));
    }

    @Test
    void rule5CellsMayStandInQuotes() {
        assertThat(cells("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")).isEqualTo(BOTH);
    }

    @Test
    void rule6AQuotedCellMayHoldLineEndsAndCommas() {
        List<CsvRecords.Line> lines = CsvRecords.read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n\"a,b\"", ',');
        assertThat(lines.stream().map(CsvRecords.Line::cells))
                .containsExactly(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"), List.of("a,b"));
        assertThat(lines.stream().map(CsvRecords.Line::line)).containsExactly(1, 3, 4);
    }

    @Test
    void rule7AQuoteInsideAQuotedCellIsDoubled() {
        assertThat(cells("\"aaa\",\"b\"\"bb\",\"ccc\"")).containsExactly(List.of("aaa", "b\"bb", "ccc"));
    }

    @Test
    void commasAlonePartEmptyCells() {
        assertThat(cells(",,")).containsExactly(List.of("", "", ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"aaa,b\"b", "aaa, \"bbb\"", "aaa\"\""})
    void aQuoteInsideABareCellIsOutsideTheGrammar(String record) {
        assertThat(fault("x,y\r\n" + record + "\r\nx,y"))
                .isEqualTo(
                        "2: a quote stands in the middle of a cell; put quotes round the whole cell and write a quote"
                                + " inside it twice");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"aaa\" ,b", "\"aaa\"b,c"})
    void nothingMayFollowAClosingQuote(String record) {
        assertThat(fault("x,y\r\n" + record + "\r\nx,y"))
                .isEqualTo(
                        "2: something stands after the closing quote of a cell; put the whole cell inside the quotes;"
                                + " not even a space may follow them");
    }

    @ParameterizedTest
    @ValueSource(strings = {"aaa,\"bbb\nx,y\nz,z\n", "aaa,\"bbb\nx,\"y\"\nz,z\n", "aaa,\"bbb\nx,y\nz,\"\"\n"})
    void aQuoteThatIsNotClosedCostsOneLineOnly(String text) {
        List<CsvRecords.Line> lines = CsvRecords.read("q,r\n" + text, ',');
        assertThat(lines).hasSize(4);
        assertThat(lines.get(1).line()).isEqualTo(2);
        assertThat(lines.get(1).fault())
                .contains(new CsvRecords.Fault(
                        "a cell starts with a quote that is not closed", "close it, or take the quote out"));
        assertThat(lines.get(2).line()).isEqualTo(3);
        assertThat(lines.get(2).cells()).startsWith("x");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void linesAreCountedAlikeWhateverEndsThem(String end) {
        List<CsvRecords.Line> lines =
                CsvRecords.read("# note" + end + "a,b" + end + end + "  " + end + "c,d" + end, ',');
        assertThat(lines.stream().map(CsvRecords.Line::line)).containsExactly(2, 5);
    }

    @Test
    void aNoteCountsForNothingButASignInsideARecordDoes() {
        assertThat(cells("# a \"note\nb,#c\n\"#d\",\"e\n# f\"\n"))
                .containsExactly(List.of("b", "#c"), List.of("#d", "e\n# f"));
    }

    @Test
    void anotherDelimiterMayPartTheCells() {
        assertThat(CsvRecords.read("a;\"b;c\";4,5", ';').get(0).cells()).containsExactly("a", "b;c", "4,5");
    }

    private static String fault(String text) {
        List<CsvRecords.Line> lines = CsvRecords.read(text, ',');
        assertThat(lines).hasSize(3);
        assertThat(lines.get(2).cells()).containsExactly("x", "y");
        return lines.get(1).line() + ": "
                + lines.get(1)
                        .fault()
                        .map(fault -> fault.what() + "; " + fault.mend())
                        .orElseThrow();
    }
}
