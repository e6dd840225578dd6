package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Sums worked by hand. */
final class PrintTallyTest {
    private static final PrintRates RATES = new PrintRates(
            5, new PrintRates.Rate(new BigDecimal("0.03"), 500), new PrintRates.Rate(new BigDecimal("0.125"), 250), 20);

    private static PrintJob job(int pages, Sides sides, Stock stock, int copies) {
        return new PrintJob("a file", pages, sides, stock, copies, "staple");
    }

    @Test
    void aClubOfTwentyFourIsAsWorked() {
        // Booklets of 16 pages are 4 sheets, which a printer fills on both sides with two pages each.
        PrintTally tally = PrintTally.of(
                List.of(job(8, Sides.TWO, Stock.PLAIN, 24), job(15, Sides.ONE, Stock.PLAIN, 24)), Paper.A4, RATES);

        assertThat(tally.sheets()).isEqualTo(456);
        assertThat(tally.spare()).isEqualTo(23);
        assertThat(tally.all()).isEqualTo(479);
        assertThat(tally.stocks()).hasSize(1);
        PrintTally.Line plain = tally.stocks().get(0);
        assertThat(plain.packs()).isEqualTo(1);
        // 479 sheets of 80 g/m², 0.21 m by 0.297 m.
        assertThat(plain.kilograms()).isCloseTo(2.390, within(0.0005));
        assertThat(plain.pounds()).isCloseTo(5.269, within(0.0005));
        assertThat(tally.cost()).isEqualByComparingTo("14.37");
        // 24 times 8 and 15 pages at 20 a minute: 27.6.
        assertThat(tally.printedPages()).isEqualTo(552);
        assertThat(tally.minutes()).isEqualTo(28);
        assertThat(tally.hours()).isCloseTo(0.4667, within(0.0001));
    }

    @Test
    void eachStockHasItsOwnSpareSheetsPacksAndPrice() {
        PrintTally tally = PrintTally.of(
                List.of(job(7, Sides.TWO, Stock.PLAIN, 3), job(5, Sides.ONE, Stock.CARD, 51)), Paper.LETTER, RATES);

        PrintTally.Line plain = tally.stocks().get(0);
        assertThat(List.of(plain.sheets(), plain.spare(), plain.all(), plain.packs()))
                .containsExactly(12, 1, 13, 1);
        assertThat(plain.cost()).isEqualTo(new BigDecimal("0.39"));
        PrintTally.Line card = tally.stocks().get(1);
        assertThat(List.of(card.sheets(), card.spare(), card.all(), card.packs()))
                .containsExactly(255, 13, 268, 2);
        assertThat(card.cost()).isEqualTo(new BigDecimal("33.500"));
        assertThat(tally.cost()).isEqualByComparingTo("33.89");
        assertThat(tally.all()).isEqualTo(281);
    }

    @Test
    void nothingToPrintTakesNothing() {
        PrintTally tally = PrintTally.of(List.of(job(0, Sides.TWO, Stock.PLAIN, 4)), Paper.A4, RATES);
        assertThat(tally.stocks()).isEmpty();
        assertThat(tally.all()).isZero();
        assertThat(tally.minutes()).isZero();
        assertThat(tally.cost()).isEqualTo(new BigDecimal("0.00"));
    }

    @RepeatedTest(100)
    void theSumsAgree(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        List<PrintJob> jobs = new ArrayList<>();
        for (int jobCount = random.nextInt(20); jobCount > 0; jobCount--) {
            jobs.add(job(
                    random.nextInt(90),
                    random.nextBoolean() ? Sides.ONE : Sides.TWO,
                    random.nextBoolean() ? Stock.PLAIN : Stock.CARD,
                    random.nextInt(40)));
        }
        PrintTally tally = PrintTally.of(jobs, Paper.A4, RATES);
        int sheets = 0;
        int pages = 0;
        for (PrintJob job : jobs) {
            for (int copy = 0; copy < job.copies(); copy++) {
                pages += job.pages();
                // A printer takes a sheet for each first page, and with both sides for every second one after it.
                for (int page = 0; page < job.pages(); page += job.sides() == Sides.TWO ? 2 : 1) {
                    sheets++;
                }
            }
        }
        String what = "seed " + seed;
        assertThat(tally.sheets()).as(what).isEqualTo(sheets);
        assertThat(tally.printedPages()).as(what).isEqualTo(pages);
        assertThat(tally.all()).as(what).isEqualTo(tally.sheets() + tally.spare());
        BigDecimal cost = BigDecimal.ZERO;
        for (PrintTally.Line line : tally.stocks()) {
            assertThat(line.spare() * 100).as(what).isBetween(line.sheets() * 5, line.sheets() * 5 + 99);
            assertThat(line.packs() * RATES.of(line.stock()).pack()).as(what).isGreaterThanOrEqualTo(line.all());
            assertThat((line.packs() - 1) * RATES.of(line.stock()).pack())
                    .as(what)
                    .isLessThan(line.all());
            cost = cost.add(line.price().multiply(BigDecimal.valueOf(line.all())));
        }
        assertThat(tally.cost()).as(what).isEqualByComparingTo(cost);
        assertThat(tally.grams())
                .as(what)
                .isCloseTo(
                        tally.stocks().stream()
                                .mapToDouble(PrintTally.Line::grams)
                                .sum(),
                        within(1e-9));
    }

    @Test
    void aJobOfLessThanNothingIsABug() {
        assertThatThrownBy(() -> job(-1, Sides.ONE, Stock.PLAIN, 1)).hasMessage("a file: -1 pages, 1 copies");
    }
}
