package hutchleaf.club;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Needs;
import hutchleaf.model.Setting;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The columns {@code setting} and {@code accommodation} of a roster. */
final class NeedsTest {
    private static final String HEAD =
            "member_name,birth_date,rabbit_name,breed,colour,sex,rabbit_birth_date,ear_number,setting,accommodation\n";
    private static final String ROW = "Fern Quillby,2016-04-25,Biscuit,Dutch,black,doe,2025-10-01,QB1,";

    @TempDir
    private Path temp = Path.of("");

    private Folder.Read read(String cells) {
        return new Folder(temp).members(HEAD + ROW + cells + "\n");
    }

    @ParameterizedTest
    @CsvSource({
        "large print, LARGE",
        "Large-Print, LARGE",
        "LARGE, LARGE",
        "large_print, LARGE",
        "18 pt, LARGE",
        "easy read, EASY",
        "Easy-read, EASY",
        "easy, EASY",
        "'', ORDINARY",
        "none, ORDINARY"
    })
    void aSettingIsReadInAnyOfItsWords(String written, Setting setting) {
        Folder.Read read = read(written + ",");
        assertThat(read.bad()).isEmpty();
        assertThat(read.only().needs()).isEqualTo(new Needs(setting, false, false));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "talk through | true | false",
                "Talk-through | true | false",
                "cue card | false | true",
                "cue-card | false | true",
                "\"talk through, cue card\" | true | true",
                "cue card and talk through | true | true",
                "talk through + cue card | true | true",
                "both | true | true",
                "none | false | false"
            })
    void anAccommodationIsReadInAnyOfItsWords(String written, boolean talkThrough, boolean cueCard) {
        Folder.Read read = read("," + written);
        assertThat(read.bad()).isEmpty();
        assertThat(read.only().needs()).isEqualTo(new Needs(Setting.ORDINARY, talkThrough, cueCard));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "large prnt,    | 'setting' is 'large prnt'; did you mean 'large print'?",
                "esay read,     | 'setting' is 'esay read'; did you mean 'easy read'?",
                "14 pt,         | 'setting' is '14 pt'; write large print or easy read, or nothing",
                ",talk thru     | 'accommodation' is 'talk thru'; did you mean 'talk through'?",
                ",cue card and a chair | 'accommodation' is 'cue card and a chair'; write talk through, cue card, both of them, or nothing"
            })
    void aWordThatIsNotKnownIsToldWithItsLine(String cells, String message) {
        assertThat(read(cells.strip()).bad()).containsExactly("club/members.csv:2: " + message);
    }

    @Test
    void aRosterWithoutTheColumnsIsAsBefore() {
        assertThat(new Folder(temp).members(Folder.rows("")).only().needs()).isEqualTo(Needs.NONE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Print size", "PRINT SETTING", "print"})
    void theColumnMayHaveAnotherName(String head) {
        Folder.Read read = new Folder(temp).members(HEAD.replace("setting", head) + ROW + "large,\n");
        assertThat(read.problems()).isEmpty();
        assertThat(read.only().needs().setting()).isEqualTo(Setting.LARGE);
    }

    @Test
    void aLaterRowMayTellWhatTheFirstLeavesOpenButNotAnotherThing() {
        String second = ROW.replace("Biscuit", "Pip").replace("QB1", "QB2");
        assertThat(new Folder(temp)
                        .members(HEAD + ROW + ",cue card\n" + second + "easy read,\n")
                        .only()
                        .needs())
                .isEqualTo(new Needs(Setting.EASY, false, true));
        assertThat(new Folder(temp)
                        .members(HEAD + ROW + "large print,\n" + second + "easy read,\n")
                        .bad())
                .containsExactly(
                        "club/members.csv:3: 'setting' of 'Fern Quillby' differs from line 2; write the same in"
                                + " both rows");
    }
}
