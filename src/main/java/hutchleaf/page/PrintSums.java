package hutchleaf.page;

import hutchleaf.page.PrintPlanData.File;
import hutchleaf.page.PrintPlanData.Use;
import hutchleaf.page.PrintPlanView.Head;
import hutchleaf.page.PrintPlanView.PaperLine;
import hutchleaf.page.PrintPlanView.Spare;
import hutchleaf.page.PrintPlanView.Sums;
import hutchleaf.sheet.InkUse;
import hutchleaf.sheet.Paper;
import hutchleaf.sheet.PrintRates;
import hutchleaf.sheet.PrintTally;
import hutchleaf.sheet.Stock;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The sums of a print plan, written out. */
final class PrintSums {
    private final PrintPlanData data;
    private final Paper paper;
    private final PrintRates rates;
    private final PrintTally tally;

    /** Decimals of every amount: two, or as many as a price has. */
    private final int decimals;

    PrintSums(PrintPlanData data, Paper paper) {
        this.data = data;
        this.paper = paper;
        this.rates = data.rates().counted();
        this.tally = PrintTally.of(data.files().stream().map(File::job).toList(), paper, rates);
        this.decimals = Arrays.stream(Stock.values())
                .mapToInt(stock -> rates.of(stock).cost(1).scale())
                .max()
                .orElse(2);
    }

    Head head() {
        PrintPlanData.Show show = data.show();
        return new Head(
                show.club(),
                count(data.members().size(), "member") + " · " + show.name() + ", " + show.date(),
                tally.all(),
                money(tally.cost()),
                duration(),
                uses());
    }

    /** {@code 137 sheets for members, 11.4 each on average; 124 for the club’s binder; 15 for the judge.} */
    private String uses() {
        List<String> parts = new ArrayList<>();
        for (Use use : Use.values()) {
            int sheets = data.files().stream()
                    .filter(file -> file.use() == use)
                    .mapToInt(file -> file.job().sheets())
                    .sum();
            if (sheets > 0) {
                parts.add((parts.isEmpty() ? count(sheets, "sheet") : String.valueOf(sheets)) + " for "
                        + whom(use, sheets));
            }
        }
        return parts.isEmpty() ? "Nothing to print." : String.join("; ", parts) + ".";
    }

    private String whom(Use use, int sheets) {
        return switch (use) {
            case MEMBERS ->
                String.format(
                        Locale.ROOT,
                        "members, %.1f each on average",
                        (double) sheets / data.members().size());
            case CLUB -> "the club";
            case JUDGE -> "the judge";
        };
    }

    Sums sums() {
        List<Spare> spare = tally.stocks().stream()
                .map(line -> new Spare(
                        "Spare " + kind(line.stock()) + ", " + rates.sparePercent() + " % of " + line.sheets(),
                        line.spare(),
                        cost(line.stock(), line.spare())))
                .toList();
        BigDecimal rows = tally.stocks().stream()
                .map(line -> rates.of(line.stock()).cost(line.sheets()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Sums(
                data.rates().currency(), tally.sheets(), amount(rows), spare, tally.all(), amount(tally.cost()));
    }

    List<PaperLine> papers() {
        return tally.stocks().stream()
                .map(line -> new PaperLine(
                        name(line.stock()),
                        line.sheets(),
                        line.spare(),
                        line.all(),
                        line.packs() + " of " + rates.of(line.stock()).pack(),
                        money(line.price()),
                        money(line.cost()),
                        String.format(Locale.ROOT, "%.1f kg, %.1f lb", line.kilograms(), line.pounds())))
                .toList();
    }

    /** What the printer takes, as a sum that can be checked. */
    String time() {
        return tally.printedPages() + " pages at " + rates.pagesAMinute() + " a minute: about " + duration() + ".";
    }

    /**
     * What it takes of a cartridge, in the pages by which cartridges are rated; without misprints, as the time. Empty where
     * nothing was measured.
     */
    Optional<String> toner() {
        InkUse ink = data.files().stream().flatMap(file -> file.ink().stream()).reduce(InkUse.NONE, InkUse::plus);
        if (ink.pages() == 0) {
            return Optional.empty();
        }
        long rated = Math.max(1, Math.round(ink.ratedPages()));
        return Optional.of(String.format(
                Locale.ROOT,
                "%s of a page is black on average: %s %s the toner of about %s at %.0f %%, by which cartridges are rated.",
                percent(ink.mean()) + " %",
                count(ink.pages(), "page"),
                ink.pages() == 1 ? "takes" : "take",
                count(rated, "page"),
                InkUse.RATED_SHARE * 100));
    }

    /** A share in a hundred, with one decimal. */
    static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f", share * 100);
    }

    private String duration() {
        int minutes = tally.minutes() % 60;
        int hours = tally.minutes() / 60;
        String rest = count(minutes, "minute");
        return hours == 0 ? rest : count(hours, "hour") + (minutes == 0 ? "" : " " + rest);
    }

    /** What so many sheets cost, without the currency. */
    String cost(Stock stock, int sheets) {
        return amount(rates.of(stock).cost(sheets));
    }

    private String amount(BigDecimal amount) {
        return amount.setScale(decimals).toPlainString();
    }

    /** The currency before the amount, a code with a space. */
    private String money(BigDecimal amount) {
        String currency = data.rates().currency();
        boolean code = !currency.isEmpty() && Character.isLetter(currency.charAt(currency.length() - 1));
        return currency + (code ? "\u00A0" : "") + amount(amount);
    }

    private static String kind(Stock stock) {
        return stock == Stock.PLAIN ? "plain paper" : "card";
    }

    /** The stock as it is sold where the paper is; its weight is reckoned from this. */
    private String name(Stock stock) {
        return switch (stock) {
            case PLAIN -> paper == Paper.A4 ? "Plain paper, 80 g/m²" : "Plain paper, 20 lb bond";
            case CARD -> paper == Paper.A4 ? "Card, 160 g/m²" : "Card, 65 lb cover";
        };
    }

    private static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
