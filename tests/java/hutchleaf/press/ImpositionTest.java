package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hutchleaf.press.PdfWords.Word;
import hutchleaf.sheet.Booklet;
import hutchleaf.sheet.Booklet.Binding;
import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.HalfSheet;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sheets of a booklet, read back from the finished PDF. Every page says its number, at the same place. */
final class ImpositionTest {
    private static final COSName STREAM = COSName.getPDFName("Stm");

    private static final Grammage BOND = new Grammage(75.2);

    /** 20 lb bond: mcgpaper.com's table. */
    private static final double BOND_MM = 0.097;

    /** Where each page prints its word, from its left edge. */
    private static final double LEFT = 15;

    @ParameterizedTest
    @EnumSource
    void thePagesStandInThePublishedOrderAndMoveTowardsTheFoldByTheThicknessOfTheSheetsRoundThem(Paper paper) {
        Printed sheets = impose(pages(16, paper), paper, Binding.NESTED, BOND);
        List<Word> words = PdfWords.of(Proofs.bytes(sheets));
        assertThat(order(words)).isEqualTo("16|1 2|15 14|3 4|13 12|5 6|11 10|7 8|9");
        double fold = paper.height().mm() / 2;
        double width = HalfSheet.of(paper).width().mm();
        for (Word word : words) {
            int round = (word.page() - 1) / 2;
            double creep = BOND_MM * round;
            boolean right = word.x() > fold;
            double edge = right ? fold - creep : fold - width + creep;
            assertThat(word.x()).as(word.toString()).isCloseTo(edge + LEFT, within(0.05));
        }
    }

    @Test
    void aStackIsPrintedOnOneSideAndNothingMoves() {
        Printed sheets = impose(pages(5, Paper.A4), Paper.A4, Binding.STACKED, BOND);
        List<Word> words = PdfWords.of(Proofs.bytes(sheets));
        assertThat(sheets.pages()).isEqualTo(3);
        assertThat(order(words)).isEqualTo("1|2 3|4 5");
        assertThat(words)
                .allSatisfy(
                        word -> assertThat(word.x() % 148).as(word.toString()).isCloseTo(LEFT + 0.5, within(0.05)));
    }

    /** Left and right page of each side, as a reader's eye finds them. */
    private static String order(List<Word> words) {
        Map<Integer, List<Word>> sides = words.stream().collect(Collectors.groupingBy(Word::page));
        return sides.values().stream()
                .map(side -> side.stream()
                        .sorted(Comparator.comparingDouble(Word::x))
                        .map(Word::text)
                        .collect(Collectors.joining("|")))
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @EnumSource
    void theSheetsArePdfUaAndHaveTheSizeOfThePaperHeldSideways(Paper paper) {
        Printed sheets = impose(pages(9, paper), paper, Binding.NESTED, BOND);
        assertThat(PdfUa.violations(Proofs.bytes(sheets))).isEmpty();
        assertThat(sheets.pages()).isEqualTo(6);
    }

    @Test
    void theTagsAreReadInTheOrderOfThePages() {
        byte[] sheets = Proofs.bytes(impose(pages(8, Paper.A4), Paper.A4, Binding.NESTED, BOND));
        // The sides on which pages 1 to 8 stand: 8|1 2|7 6|3 4|5.
        assertThat(sidesInReadingOrder(sheets)).containsExactly(1, 2, 3, 4, 4, 3, 2, 1);
    }

    private static List<Integer> sidesInReadingOrder(byte[] file) {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            List<COSDictionary> pages = new ArrayList<>();
            pdf.getPages().forEach(page -> pages.add(page.getCOSObject()));
            List<Integer> sides = new ArrayList<>();
            COSDictionary root = pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
            COSArray owners = root.getCOSDictionary(COSName.PARENT_TREE).getCOSArray(COSName.NUMS);
            walk(root, content -> {
                sides.add(pages.indexOf(content.reference().getCOSDictionary(COSName.PG)) + 1);
                assertThat(owner(owners, content.reference())).isSameAs(content.owner());
            });
            return sides;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A reference to marked content in a stream, and the tag it stands in. */
    private record Content(COSDictionary reference, COSDictionary owner) {}

    private static void walk(COSDictionary tag, Consumer<Content> found) {
        for (COSBase kid : TagMend.kids(tag)) {
            assertThat(kid).as("a number without a stream").isInstanceOf(COSDictionary.class);
            COSDictionary inner = (COSDictionary) kid;
            if (inner.containsKey(STREAM)) {
                found.accept(new Content(inner, tag));
            } else {
                walk(inner, found);
            }
        }
    }

    /** The tag that the parent tree names for marked content (ISO 32000-1, 14.7.4.4). */
    private static COSBase owner(COSArray numbers, COSDictionary reference) {
        int key = ((COSStream) reference.getDictionaryObject(STREAM)).getInt(COSName.STRUCT_PARENTS);
        for (int i = 0; i < numbers.size(); i += 2) {
            if (numbers.getInt(i) == key) {
                return ((COSArray) numbers.getObject(i + 1)).getObject(reference.getInt(COSName.getPDFName("MCID")));
            }
        }
        throw new AssertionError("the parent tree has no key " + key);
    }

    @Test
    void theSamePagesGiveTheSameBytes() {
        Printed once = impose(pages(6, Paper.LETTER), Paper.LETTER, Binding.NESTED, BOND);
        Printed again = impose(pages(6, Paper.LETTER), Paper.LETTER, Binding.NESTED, BOND);
        assertThat(Proofs.bytes(again)).isEqualTo(Proofs.bytes(once));
    }

    @Test
    void aWholePageDoesNotStandOnHalfASheet() {
        Printed whole = Proofs.print(Proofs.page("", "<p>1</p>"));
        assertThatThrownBy(() -> impose(whole, Paper.LETTER, Binding.STACKED, BOND))
                .hasMessageContaining("half a sheet of LETTER");
    }

    private static Printed impose(Printed pages, Paper paper, Binding binding, Grammage weight) {
        return Imposition.of("Sheets", "en", pages, Booklet.of(pages.pages(), binding), paper, weight);
    }

    private static Printed pages(int many, Paper paper) {
        HalfSheet half = HalfSheet.of(paper);
        String style = "@page { size: " + half.width().css() + " "
                + half.height().css() + "; margin: 20mm " + LEFT + "mm } p + p { page-break-before: always } ";
        return Proofs.print(Proofs.page(
                style,
                IntStream.rangeClosed(1, many)
                        .mapToObj(page -> "<p>" + page + "</p>")
                        .collect(Collectors.joining())));
    }
}
