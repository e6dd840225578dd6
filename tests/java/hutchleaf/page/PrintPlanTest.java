package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.page.PdfInk.Shape;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The print plan as it comes out of the press, read back. */
final class PrintPlanTest {
    private static final Press PRESS = new Press(path -> Optional.empty());
    private static final Map<Map.Entry<PrintPlanData, Paper>, byte[]> PRINTED = new ConcurrentHashMap<>();
    private static final double MARGIN = 7;

    /** A leader's box to tick: 5 mm. */
    private static final double TICK = 5;

    /** The thinnest line, 0.9 pt, less the rounding of the engine: mm. */
    private static final double THINNEST = 0.9 * 25.4 / 72 - 0.02;

    private static final List<String> WARNINGS = List.of(
            "club/members.csv:5: Cocoa has no weight; ask the family, the packet prints a line to write it on",
            "club/members.csv:8: Maple is younger than eight weeks on the show day; check the rule book");

    static Stream<Arguments> clubs() {
        return Stream.of(Paper.values())
                .flatMap(paper -> Stream.of(1, 14, 40).map(members -> Arguments.of(paper, members)));
    }

    /** Each plan is printed once. */
    private static byte[] print(PrintPlanData plan, Paper paper) {
        return PRINTED.computeIfAbsent(Map.entry(plan, paper), key -> press(plan, paper));
    }

    private static byte[] press(PrintPlanData plan, Paper paper) {
        Problems problems = new Problems();
        Printed printed = new Publications(Templates.folder(Path.of("templates")), paper, "en-GB")
                .printPlan(plan, problems)
                .flatMap(pages -> PRESS.print(pages, problems))
                .orElseThrow(() -> new AssertionError(problems.sorted()));
        assertThat(problems.sorted()).isEmpty();
        return RealTree.bytes(printed);
    }

    private static int pages(byte[] pdf) {
        return PdfWords.of(pdf).stream().mapToInt(Word::page).max().orElse(0);
    }

    private static String text(byte[] pdf) {
        return IntStream.rangeClosed(1, pages(pdf))
                .mapToObj(page -> PdfWords.text(pdf, page))
                .collect(Collectors.joining())
                .replaceAll("[ \u00A0]+", " ");
    }

    @ParameterizedTest
    @MethodSource("clubs")
    void everyPageIsInsideItsMarginsAndPdfUa(Paper paper, int members) {
        byte[] pdf = print(PrintPlans.plan(members, members == 14 ? WARNINGS : List.of()), paper);
        double width = paper.width().mm();
        double height = paper.height().mm();
        for (int page = 1; page <= pages(pdf); page++) {
            assertThat(PdfInk.shapes(pdf, page))
                    .as("page " + page)
                    .allMatch(shape -> inside(shape.x(), shape.w(), width), "inside the sides")
                    .allMatch(shape -> inside(shape.y(), shape.h(), height), "inside top and foot")
                    .allMatch(shape -> Math.min(shape.w(), shape.h()) >= THINNEST, "thick enough")
                    .allMatch(shape -> shape.rgb() == 0 || shape.rgb() == 0xffffff, "black or white");
        }
        assertThat(PdfWords.of(pdf))
                .allMatch(word -> inside(word.x(), word.width(), width), "inside the sides")
                .allMatch(word -> inside(word.y() - word.size() * 0.26, word.size() * 0.33, height), "inside")
                .allMatch(word -> word.size() >= 9.5 - 0.01, "9.5 pt or more");
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }

    private static boolean inside(double from, double length, double whole) {
        return from >= MARGIN - 0.05 && from + length <= whole - MARGIN + 0.05;
    }

    /**
     * By hand. Packets: 4 of 8 pages, 3 of 14, 4 of 16, 3 of 16 on both sides: 16 + 21 + 32 + 24 = 93 sheets. Cards: 14
     * times 4 sheets of card = 56. Practice sheets 10. Guides 14 + 30 + 36 + 44 = 124. Judge 3 + 6. Spare 5 % of 236 and
     * of 56. Plain 248 at 0.03, card 59 at 0.12. Pages 186 + 56 + 10 + 248 + 9 = 509, at 20 a minute 25.45 minutes.
     * Weight: 500 letter sheets of 20 lb bond weigh 5 lb; 500 of 65 lb cover 65 x 93.5 / 520 lb (the area of letter in
     * that of 20 by 26 inches).
     */
    @Test
    void theSumsAreAsWorkedByHand() {
        assertThat(text(print(PrintPlans.plan(14, List.of()), Paper.LETTER)))
                .contains("307 sheets", "$14.52; 26 minutes of printing")
                .contains("159 sheets for members, 11.4 each on average; 124 for the club; 9 for the judge.")
                .contains("All the rows above 292 13.80")
                .contains("Spare plain paper, 5 % of 236 12 0.36", "Spare card, 5 % of 56 3 0.36")
                .contains("All of it 307 14.52")
                .contains("Plain paper, 20 lb bond 236 12 248 1 of 500 $0.03 $7.44 1.1 kg, 2.5 lb")
                .contains("Card, 65 lb cover 56 3 59 1 of 250 $0.12 $7.08 0.6 kg, 1.4 lb")
                .contains("509 pages at 20 a minute: about 26 minutes.")
                .contains("All members 159 304");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void thePrintedSheetsAndCostsAddUpToWhatStandsUnderThem(Paper paper) {
        byte[] pdf = print(PrintPlans.plan(40, List.of()), paper);
        List<Word> first =
                PdfWords.of(pdf).stream().filter(word -> word.page() == 1).toList();
        double under = y(first, "All");
        List<Word> costs = first.stream()
                .filter(word -> word.text().matches("\\d+\\.\\d\\d"))
                .toList();
        double cents = costs.stream()
                .filter(word -> word.y() < under - 1)
                .mapToDouble(word -> Double.parseDouble(word.text()) * 100)
                .sum();
        assertThat(costs.stream().filter(word -> word.y() < under - 1)).hasSize(15);
        assertThat(Math.round(cents)).isEqualTo(3219);
        // 433 plain sheets at 3 cents and 160 of card at 12.
        assertThat(433 * 3 + 160 * 12).isEqualTo(3219);
        assertThat(text(pdf)).contains("All the rows above 593 32.19", "All of it 623 33.81");
        // Spare: 22 and 8.
        assertThat(3219 + 22 * 3 + 8 * 12).isEqualTo(3381);
    }

    private static double y(List<Word> words, String text) {
        return words.stream()
                .filter(word -> word.text().equals(text))
                .mapToDouble(Word::y)
                .min()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("clubs")
    void everyMemberHasALineAPlaceInTheOrderAndALabel(Paper paper, int members) {
        PrintPlanData plan = PrintPlans.plan(members, List.of());
        byte[] pdf = print(plan, paper);
        for (PrintPlanData.MemberLine member : plan.members()) {
            assertThat(PdfWords.of(pdf, String.valueOf(member.number())).stream()
                            .filter(word -> word.page() > 1))
                    .as(member.name())
                    .extracting(Word::size)
                    .containsExactly(10.0, 13.0, 32.0);
        }
        int ticks = IntStream.rangeClosed(1, pages(pdf))
                .map(page -> (int) PdfInk.boxes(PdfInk.shapes(pdf, page)).stream()
                        .filter(PrintPlanTest::isTick)
                        .count())
                .sum();
        // A tick for each file; printed, folded, cut and handed out; here; three on each label; two checks.
        assertThat(ticks).isEqualTo(plan.files().size() + members * (4 + 1 + 3) + 2);
    }

    private static boolean isTick(Shape box) {
        return Math.abs(box.w() - TICK) < 0.05 && Math.abs(box.h() - TICK) < 0.05;
    }

    @Test
    void theYoungestShowFirstAndAMissingEarNumberLeavesALine() {
        String text = text(print(PrintPlans.plan(14, List.of()), Paper.A4));
        assertThat(text.substring(text.indexOf("Order of showing")))
                .containsSubsequence(
                        "Youngest",
                        "Primary, 4 showing",
                        "101 Fern Quillby Biscuit Mini Lop QB10",
                        "Junior",
                        "3 showing",
                        "105 Tamsin Ord Maple Dutch \n",
                        "Intermediate",
                        "Senior",
                        "114 Zoë Quillby Cocoa Flemish Giant QB23",
                        "Labels");
    }

    @Test
    void aTableThatRunsOnRepeatsItsHead() {
        byte[] pdf = print(PrintPlans.plan(40, List.of()), Paper.LETTER);
        List<Integer> members =
                PdfWords.of(pdf, "Handed").stream().map(Word::page).toList();
        assertThat(members).hasSizeGreaterThan(1).doesNotHaveDuplicates();
    }

    @Test
    void theHeadSendsTheLeaderToWhatIsToBeSettled() {
        byte[] pdf = print(PrintPlans.plan(14, WARNINGS), Paper.LETTER);
        int page = PdfWords.of(pdf, "club/members.csv:5:").get(0).page();
        assertThat(PdfWords.text(pdf, 1)).contains("Settle first: 2 points under “Before you print”, page " + page);
        assertThat(PdfWords.text(pdf, page)).contains("Before you print", "Maple is younger than eight weeks");
        assertThat(PdfWords.text(print(PrintPlans.plan(14, List.of()), Paper.LETTER), 1))
                .doesNotContain("Settle first");
    }

    @Test
    void anEmptyPlanIsAPageThatSaysSo() {
        PrintPlanData full = PrintPlans.plan(1, List.of());
        byte[] pdf = print(new PrintPlanData(full.show(), full.rates(), List.of(), List.of(), List.of()), Paper.A4);
        assertThat(pages(pdf)).isEqualTo(1);
        assertThat(text(pdf)).contains("0 sheets", "Nothing to print.");
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }
}
