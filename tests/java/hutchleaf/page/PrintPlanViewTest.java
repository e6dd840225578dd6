package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hutchleaf.page.PrintPlanData.After;
import hutchleaf.page.PrintPlanData.File;
import hutchleaf.page.PrintPlanData.MemberLine;
import hutchleaf.page.PrintPlanData.Rates;
import hutchleaf.page.PrintPlanData.Use;
import hutchleaf.sheet.InkUse;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.PrintRates;
import hutchleaf.sheet.Sides;
import hutchleaf.sheet.Stock;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class PrintPlanViewTest {
    private static final PrintPlanData PLAN = PrintPlans.plan(14, List.of());

    private static PrintPlanView at(String currency, String plain, int pagesAMinute) {
        PrintRates rates = new PrintRates(5, PrintPlans.rate(plain, 500), PrintPlans.rate("0.12", 250), pagesAMinute);
        return PrintPlanPages.of(
                new PrintPlanData(PLAN.show(), new Rates(currency, rates), PLAN.files(), PLAN.members(), List.of()),
                Paper.A4);
    }

    @Test
    void aPriceInTenthsOfACentGivesEveryAmountThreeDecimals() {
        PrintPlanView view = at("€", "0.025", 20);
        BigDecimal rows = view.groups().stream()
                .flatMap(group -> group.rows().stream())
                .map(row -> new BigDecimal(row.cost()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        // 236 times 0.025 and 56 times 0.12; with spare sheets 248 and 59.
        assertThat(view.sums().cost()).isEqualTo("12.620").isEqualTo(rows.toPlainString());
        assertThat(view.sums().allCost()).isEqualTo("13.280");
        assertThat(view.sums().spare()).extracting(PrintPlanView.Spare::cost).containsExactly("0.300", "0.360");
        assertThat(view.head().cost()).isEqualTo("€13.280");
    }

    @Test
    void aCurrencyCodeStandsApartFromItsAmount() {
        assertThat(at("EUR", "0.03", 20).head().cost()).isEqualTo("EUR\u00A014.52");
        assertThat(at("", "0.03", 20).head().cost()).isEqualTo("14.52");
    }

    @Test
    void aLongRunIsToldInHours() {
        // 509 pages.
        assertThat(at("$", "0.03", 4).time()).isEqualTo("509 pages at 4 a minute: about 2 hours 8 minutes.");
        assertThat(at("$", "0.03", 9).head().time()).isEqualTo("57 minutes");
        assertThat(at("$", "0.03", 1000).head().time()).isEqualTo("1 minute");
    }

    @Test
    void filesStandByWhomTheyAreForAndMembersWithoutCardsHaveNothingToFold() {
        File packet = new File("Packet", "p.pdf", Use.MEMBERS, 5, Sides.TWO, Stock.PLAIN, 1, After.STAPLE);
        File grid = new File("Grid", "g.pdf", Use.JUDGE, 1, Sides.ONE, Stock.PLAIN, 2, After.LOOSE);
        MemberLine member = PLAN.members().get(0);
        MemberLine plain =
                new MemberLine(7, member.name(), "Senior", member.level(), member.rabbit(), List.of("p.pdf"), 0);
        PrintPlanView view = PrintPlanPages.of(
                new PrintPlanData(PLAN.show(), PLAN.rates(), List.of(grid, packet), List.of(plain), List.of()),
                Paper.A4);

        assertThat(view.groups())
                .extracting(group -> group.rows().get(0).title())
                .containsExactly("Packet", "Grid");
        assertThat(view.members().get(0))
                .isEqualTo(new PrintPlanView.MemberRow(
                        7, "Fern Quillby", "Senior (primary)", "Packet", 3, 0, false, false));
        assertThat(view.steps()).extracting(PrintPlanView.Step::words).containsExactly("staple", "leave loose");
        assertThat(view.checks()).hasSize(1);
    }

    @Test
    void sumsThatCouldNotAgreeAreABug() {
        File packet = new File("Packet", "p.pdf", Use.MEMBERS, 5, Sides.TWO, Stock.PLAIN, 3, After.STAPLE);
        assertThatThrownBy(() -> new PrintPlanData(PLAN.show(), PLAN.rates(), List.of(packet), List.of(), List.of()))
                .hasMessage("3 copies of p.pdf for 0 members");
        assertThatThrownBy(() -> new PrintPlanData(PLAN.show(), PLAN.rates(), List.of(), PLAN.members(), List.of()))
                .hasMessage("Fern Quillby gets packets/primary/, one a member, which is not in the plan");
    }

    private static PrintPlanView measured(InkUse packets, InkUse grids) {
        List<File> files = List.of(
                new File("Packet", "p.pdf", Use.CLUB, 5, Sides.TWO, Stock.PLAIN, 2, After.STAPLE, Optional.of(packets)),
                new File("Grid", "g.pdf", Use.JUDGE, 1, Sides.ONE, Stock.PLAIN, 1, After.LOOSE, Optional.of(grids)),
                new File("Guide", "s.pdf", Use.CLUB, 60, Sides.TWO, Stock.PLAIN, 1, After.BINDER));
        return PrintPlanPages.of(
                new PrintPlanData(PLAN.show(), PLAN.rates(), files, List.of(), List.of()), Paper.LETTER);
    }

    @Test
    void aFileTellsHowBlackItsPagesAreAndTheClubWhatItTakesOfACartridge() {
        // Ten pages that are black by 0.52 in all, one by 0.08: 0.60 is that of 12 pages at 5 %.
        PrintPlanView view = measured(new InkUse(10, 0.52, 0.1449), new InkUse(1, 0.08, 0.08));
        assertThat(view.groups().get(0).rows())
                .extracting(PrintPlanView.Row::black)
                .containsExactly(Optional.of(new PrintPlanView.Black("5.2", "14.5")), Optional.empty());
        assertThat(view.groups().get(1).rows())
                .extracting(PrintPlanView.Row::black)
                .containsExactly(Optional.of(new PrintPlanView.Black("8.0", "8.0")));
        assertThat(view.toner())
                .contains("5.5 % of a page is black on average: 11 pages take the toner of about 12 pages at 5 %, by"
                        + " which cartridges are rated.");
    }

    @Test
    void aPlanWhoseInkWasNotMeasuredSaysNothingOfIt() {
        assertThat(at("$", "0.03", 20).toner()).isEmpty();
        assertThat(measured(InkUse.NONE, new InkUse(1, 0, 0)).toner())
                .contains("0.0 % of a page is black on average: 1 page takes the toner of about 1 page at 5 %, by which"
                        + " cartridges are rated.");
    }
}
