package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rosters as spreadsheets save them: encodings, line ends, separators. Every one of them gives the same member. */
final class EncodingTest {
    private static final String FILE = Folder.rows("member_name=Zoë Calloway; ear_number=0042");
    private static final String MARK = "\uFEFF";
    private static final String MEND = "save it again as CSV UTF-8 (plain text UTF-8 for club.md)";

    @TempDir
    private Path temp = Path.of("");

    @ParameterizedTest
    @CsvSource({"UTF-8, false", "UTF-8, true", "UTF-16LE, true", "UTF-16BE, true", "UTF-16LE, false", "UTF-16BE, false"
    })
    void aFileIsReadWithAndWithoutAByteOrderMark(String charset, boolean marked) {
        Folder.Read read = new Folder(temp).members(((marked ? MARK : "") + FILE).getBytes(Charset.forName(charset)));
        assertThat(read.only().name()).isEqualTo("Zoë Calloway");
        assertThat(read.only().rabbits().get(0).earNumber()).isEqualTo("0042");
        assertThat(read.problems())
                .isEqualTo(
                        charset.equals("UTF-8")
                                ? List.of()
                                : List.of("warning: club/members.csv: read as " + charset
                                        + " and not as UTF-8, with words such as 'Zoë'; if letters look wrong, "
                                        + MEND));
    }

    /** 0x80 is the euro sign in Windows-1252 and a fault in UTF-8 (Unicode consortium, CP1252.TXT). */
    @Test
    void windows1252IsReadAndTold() {
        byte[] bytes = Folder.rows("member_name=Zoë €").getBytes(Charset.forName("windows-1252"));
        assertThat(bytes).contains((byte) 0x80).contains((byte) 0xEB);
        Folder.Read read = new Folder(temp).members(bytes);
        assertThat(read.only().name()).isEqualTo("Zoë €");
        assertThat(read.problems())
                .containsExactly("warning: club/members.csv: read as Windows-1252 and not as UTF-8, with words such as"
                        + " 'Zoë'; if letters look wrong, " + MEND);
    }

    /** 0x81 has no meaning in Windows-1252 (the same table). */
    @Test
    void bytesThatFitNoEncodingAreRefused() {
        Folder.Read read = new Folder(temp).members(new byte[] {'a', (byte) 0x81, 'b'});
        assertThat(read.roster()).isEmpty();
        assertThat(read.problems())
                .containsExactly("club/members.csv: the file is in no encoding that we know; " + MEND);
    }

    @Test
    void zerosInPlainTextAreRefused() {
        assertThat(new Folder(temp).members("name\0,born\n").problems())
                .containsExactly("club/members.csv: the file is in no encoding that we know; " + MEND);
    }

    @Test
    void aSpreadsheetsOwnFileIsRefused() {
        assertThat(new Folder(temp).members(new byte[] {'P', 'K', 3, 4, 0}).problems())
                .containsExactly("club/members.csv: this is no plain text but a spreadsheet's own file; " + MEND);
    }

    /** Unicode Standard Annex 15: e and U+0308 compose to U+00EB. */
    @Test
    void lettersInPiecesAreComposed() {
        String pieces = Normalizer.normalize(FILE, Normalizer.Form.NFD);
        assertThat(pieces).contains("e\u0308").doesNotContain("\u00EB");
        assertThat(new Folder(temp).members(pieces).only().name()).isEqualTo("Zo\u00EB Calloway");
    }

    @ParameterizedTest
    @CsvSource({"CRLF, '\r\n'", "LF, '\n'", "CR, '\r'"})
    void lineEndsOfAnyMachineAreRead(String name, String end) {
        Folder.Read read = new Folder(temp)
                .members(Folder.rows("", "member_name=Wren Tallow; rabbit_name=Button; ear_number=QB2; sex=cow")
                        .replace("\n", end));
        assertThat(read.members()).as(name).hasSize(1);
        assertThat(read.bad()).containsExactly("club/members.csv:3: 'sex' is 'cow'; write buck or doe");
    }

    @Test
    void semicolonsAndTabsPartCellsAsWellAndNumbersMayHaveACommaThen() {
        for (String separator : List.of(";", "\t")) {
            Folder.Read read = new Folder(temp)
                    .members(
                            Folder.rows("weight_lb=4.5").replace(",", separator).replace("4.5", "4,5"));
            assertThat(read.only().rabbits().get(0).weight()).hasValueSatisfying(weight -> {
                assertThat(weight.pounds()).isEqualTo(4.5);
                assertThat(weight.asWritten()).isEqualTo("4.5 lb");
            });
            assertThat(read.problems()).isEmpty();
        }
    }

    @Test
    void theLettersFileIsReadInTheSameWay() {
        Folder.Read read = new Folder(temp)
                .club(MARK + Folder.CLUB.replace("\n", "\r\n").replace("Quarry", "Zo" + "e\u0308"))
                .members(FILE);
        assertThat(read.roster().orElseThrow().club().name()).isEqualTo("Zoë Bend Small Stock Club");
        assertThat(read.problems()).isEmpty();
    }
}
