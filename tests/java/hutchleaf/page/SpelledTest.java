package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Club.Spelling;
import hutchleaf.model.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms of words as dictionaries of both countries give them (from memory). */
final class SpelledTest {
    private static Spelled spelled(Spelling spelling) {
        return Spelled.of(RealTree.edition(Level.JUNIOR).library().wording(), spelling);
    }

    @ParameterizedTest
    @CsvSource({
        "colour, color",
        "Coloured, Colored",
        "COLOURS, COLORS",
        "steel-grey, steel-gray",
        "organising, organizing",
        "centred, centered",
        "centring, centering",
        "fibres, fibers",
        "moulting, molting",
        "behavioural, behavioral",
        "favourite, favorite",
        "neighbourhood, neighborhood",
        "labelled, labeled",
        "undercolour, undercolor",
        "programmes, programs"
    })
    void aWordChangesItsCountryAndBack(String british, String american) {
        assertThat(spelled(Spelling.US).text("The " + british + ".")).isEqualTo("The " + american + ".");
        assertThat(spelled(Spelling.UK).text("The " + american + ".")).isEqualTo("The " + british + ".");
    }

    @ParameterizedTest
    @CsvSource({
        "practised, practiced",
        "practising, practicing",
        "towards, toward",
        "storeys, stories",
        "learnt, learned"
    })
    void aWordThatIsBritishTooChangesOnlyForAnAmerican(String british, String american) {
        assertThat(spelled(Spelling.US).text(british)).isEqualTo(american);
        assertThat(spelled(Spelling.UK).text(american)).isEqualTo(american);
    }

    @ParameterizedTest
    @CsvSource({"programmed", "greyhound", "metrestick", "Moulin", "hour", "your", "four"})
    void otherWordsStay(String word) {
        assertThat(spelled(Spelling.US).text(word)).isEqualTo(word);
    }

    @Test
    void onlyWhatIsReadChangesInAPage() {
        String page = "<html lang=\"en\"><head><style>p { color: grey; }</style></head><bookmark name=\"Colour\" "
                + "href=\"#colour\"/><!-- grey --><p id=\"colour\" class=\"grey\">Grey<img src=\"hutch:colour.svg\" "
                + "alt=\"A grey ear\"/></p></html>";

        assertThat(spelled(Spelling.US).page(page))
                .isEqualTo(
                        "<html lang=\"en-US\"><head><style>p { color: grey; }</style></head><bookmark name=\"Color\" "
                                + "href=\"#colour\"/><!-- grey --><p id=\"colour\" class=\"grey\">Gray<img src=\"hutch:colour.svg\" "
                                + "alt=\"A gray ear\"/></p></html>");
    }

    @Test
    void aKeptNameStaysWithoutATrace() {
        Spelled us = spelled(Spelling.US);

        assertThat(us.text("The grey rabbit of " + us.kept("Colour Grey") + "."))
                .isEqualTo("The gray rabbit of Colour Grey.");
        assertThat(us.kept("Moss")).isEqualTo("Moss");
    }
}
