package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.press.Merge;
import hutchleaf.press.PageDigests;
import hutchleaf.press.Pages;
import hutchleaf.press.PdfLinks;
import hutchleaf.press.PdfTags;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.Printed;
import hutchleaf.sheet.Paper;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The project's own documents bound as a member's packet binds them, and pages of them taken out. */
class PacketTest {
    private static byte[] sound(Printed printed) {
        byte[] pdf = RealTree.bytes(printed);
        // Outside truth: veraPDF's profile ua1 (ISO 14289-1:2014).
        assertThat(PdfUa.violations(pdf)).isEmpty();
        assertThat(PdfTags.faults(pdf)).isEmpty();
        assertThat(PdfTags.of(pdf).stream().filter(tag -> tag.name().equals("TH")))
                .allMatch(tag -> List.of("Row", "Column", "Both").contains(tag.scope()));
        return pdf;
    }

    private static void assertPagesAre(List<Printed> parts, Printed bound) {
        List<String> digests = parts.stream()
                .flatMap(part -> PageDigests.of(part, "").stream())
                .toList();
        assertThat(PageDigests.of(bound, "")).isEqualTo(digests);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void sheetsToLabelAndTheScoreSheetAreOneFile(Paper paper) {
        List<Printed> parts = List.of(RealTree.labelIt(Level.JUNIOR, paper), RealTree.scoreSheet(Level.JUNIOR, paper));
        Printed bound = Merge.of("Junior sheets", "en", parts);
        sound(bound);
        assertPagesAre(parts, bound);
    }

    @Test
    void someCardsAndTheDeckAreOneFile() {
        List<Printed> parts =
                List.of(RealTree.cards(Level.PRIMARY, Paper.LETTER, 3), RealTree.deck(Level.PRIMARY, Paper.LETTER));
        Printed bound = Merge.of("Primary cards", "en", parts);
        byte[] pdf = sound(bound);
        assertPagesAre(parts, bound);
        assertThat(pdf.length)
                .as("less than its parts, since fonts and notes are shared")
                .isLessThan(RealTree.bytes(parts.get(0)).length + RealTree.bytes(parts.get(1)).length);
    }

    @Test
    void theGuideAndTheDeckKeepBookmarksAndLinks() {
        Printed guide = RealTree.guide(Level.PRIMARY, Paper.LETTER);
        Printed deck = RealTree.deck(Level.PRIMARY, Paper.LETTER);
        Printed bound = Merge.of("Primary guide and cards", "en", List.of(guide, deck));
        byte[] pdf = sound(bound);
        assertPagesAre(List.of(guide, deck), bound);
        assertThat(PdfLinks.of(pdf)).isNotEmpty().isEqualTo(PdfLinks.of(RealTree.bytes(guide)));
        assertThat(PdfLinks.bookmarks(pdf)).isNotEmpty().isEqualTo(PdfLinks.bookmarks(RealTree.bytes(guide)));
        byte[] after = RealTree.bytes(Merge.of("Cards and guide", "en", List.of(deck, guide)));
        assertThat(PdfLinks.of(after))
                .isEqualTo(PdfLinks.of(pdf).stream()
                        .map(link -> on(link, deck.pages()))
                        .toList());
    }

    private static String on(String link, int pages) {
        String[] ends = link.split(">", -1);
        return Integer.parseInt(ends[0]) + pages + ">" + (Integer.parseInt(ends[1]) + pages);
    }

    @Test
    void pagesOfTheGuideStandOnTheirOwn() {
        Printed guide = RealTree.guide(Level.PRIMARY, Paper.LETTER);
        List<Integer> some = IntStream.rangeClosed(1, guide.pages())
                .filter(page -> page % 13 == 0)
                .boxed()
                .toList();
        byte[] together = sound(Pages.only(guide, some));
        List<String> digests = PageDigests.of(guide, "");
        for (int i = 0; i < some.size(); i++) {
            Printed alone = Pages.only(guide, List.of(some.get(i)));
            sound(alone);
            assertThat(PageDigests.of(alone, "")).containsExactly(digests.get(some.get(i) - 1));
            assertThat(PdfWords.text(together, i + 1)).isEqualTo(PdfWords.text(RealTree.bytes(alone), 1));
        }
    }

    @Test
    void noTwoPagesOfAGuideHaveOneDigest() {
        assertThat(PageDigests.of(RealTree.guide(Level.PRIMARY, Paper.LETTER), ""))
                .doesNotHaveDuplicates();
    }
}
