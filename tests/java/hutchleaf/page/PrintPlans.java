package hutchleaf.page;

import hutchleaf.model.Level;
import hutchleaf.page.PrintPlanData.After;
import hutchleaf.page.PrintPlanData.File;
import hutchleaf.page.PrintPlanData.MemberLine;
import hutchleaf.page.PrintPlanData.Rates;
import hutchleaf.page.PrintPlanData.Show;
import hutchleaf.page.PrintPlanData.Shown;
import hutchleaf.page.PrintPlanData.Use;
import hutchleaf.sheet.PrintRates;
import hutchleaf.sheet.Sides;
import hutchleaf.sheet.Stock;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A print plan of the invented Quarry Bend Small Stock Club, for so many members. */
final class PrintPlans {
    private static final List<String> FIRST = List.of("Fern", "Otis", "Juniper", "Silas", "Tamsin", "Rowan", "Zoë");
    private static final List<String> LAST =
            List.of("Quillby", "Marl", "Hale", "Penrow", "Ord", "Varga-Wicke", "Ravensmoor");
    private static final List<String> RABBITS = List.of("Biscuit", "Button", "Domino", "Cocoa", "Maple");
    private static final List<String> BREEDS =
            List.of("Mini Lop", "Polish", "Dutch", "English Angora", "Flemish Giant");
    private static final List<String> DIVISIONS = List.of("Youngest", "Junior", "Intermediate", "Senior");

    /** Pages of a packet and of a guide, and starter cards, by level. */
    private static final int[][] SIZES = {{8, 28, 16}, {14, 60, 24}, {16, 72, 24}, {16, 88, 24}};

    private PrintPlans() {}

    static PrintRates.Rate rate(String price, int pack) {
        return new PrintRates.Rate(new BigDecimal(price), pack);
    }

    static PrintPlanData plan(int members, List<String> warnings) {
        int[] inLevel = new int[DIVISIONS.size()];
        List<MemberLine> lines = new ArrayList<>();
        for (int i = 0; i < members; i++) {
            int at = i * DIVISIONS.size() / members;
            inLevel[at]++;
            Level level = List.of(Level.values()).get(at);
            lines.add(new MemberLine(
                    101 + i,
                    FIRST.get(i % 7) + " " + LAST.get((i + i / 7) % 7),
                    DIVISIONS.get(at),
                    level,
                    new Shown(
                            RABBITS.get(i % 5),
                            BREEDS.get(i * 3 % 5),
                            i % 6 == 4 ? Optional.empty() : Optional.of("QB" + (10 + i))),
                    at == 0
                            ? List.of(packet(level), cards(level))
                            : List.of(packet(level), cards(level), "scoresheets/one-contestant.pdf"),
                    SIZES[at][2]));
        }
        List<File> files = new ArrayList<>();
        for (int at = 0; at < DIVISIONS.size(); at++) {
            Level level = List.of(Level.values()).get(at);
            int perSheet = at == 0 ? 4 : 6;
            files.add(new File(
                    level.title() + " packet",
                    packet(level),
                    Use.MEMBERS,
                    SIZES[at][0],
                    Sides.TWO,
                    Stock.PLAIN,
                    inLevel[at],
                    After.STAPLE));
            files.add(new File(
                    level.title() + " starter cards, " + SIZES[at][2],
                    cards(level),
                    Use.MEMBERS,
                    SIZES[at][2] / perSheet,
                    Sides.ONE,
                    Stock.CARD,
                    inLevel[at],
                    After.CARDS));
            files.add(new File(
                    level.title() + " guide",
                    "guides/study-guide-" + level.word() + ".pdf",
                    Use.CLUB,
                    SIZES[at][1],
                    Sides.TWO,
                    Stock.PLAIN,
                    1,
                    After.BINDER));
        }
        files.add(new File(
                "Practice score sheet",
                "scoresheets/one-contestant.pdf",
                Use.MEMBERS,
                1,
                Sides.ONE,
                Stock.PLAIN,
                members - inLevel[0],
                After.LOOSE));
        files.add(new File(
                "Grid of ten", "scoresheets/grid-of-ten.pdf", Use.JUDGE, 1, Sides.ONE, Stock.PLAIN, 3, After.LOOSE));
        files.add(new File(
                "Feedback slips", "scoresheets/feedback.pdf", Use.JUDGE, 6, Sides.ONE, Stock.PLAIN, 1, After.CUT));
        return new PrintPlanData(
                new Show("Quarry Bend Small Stock Club", "Quarry Bend Summer Show", "8 August 2026"),
                new Rates("$", new PrintRates(5, rate("0.03", 500), rate("0.12", 250), 20)),
                files,
                lines,
                warnings);
    }

    private static String packet(Level level) {
        return "packets/" + level.word() + "/, one a member";
    }

    private static String cards(Level level) {
        return "cards/starter-" + level.word() + ".pdf";
    }
}
