package hutchleaf.cli;

import hutchleaf.cli.PacketPrinter.Made;
import hutchleaf.model.Club;
import hutchleaf.model.Member;
import hutchleaf.model.Rabbit;
import hutchleaf.page.PrintPlanData;
import hutchleaf.page.PrintPlanData.After;
import hutchleaf.page.PrintPlanData.File;
import hutchleaf.page.PrintPlanData.MemberLine;
import hutchleaf.page.PrintPlanData.Use;
import hutchleaf.page.Publications;
import hutchleaf.press.Press;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.PrintRates;
import hutchleaf.sheet.Stock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the leader's print plan from what was printed. */
record PlanFile(PacketRoster roster, Contestants numbers, Publications publications, Press press, Problems problems) {
    static final String FILE = "print-plan.pdf";

    /** Packets in one plan: a larger club gets several plans, each with the sums of its own packets. */
    private static final int PACKETS = 400;

    /** Common practice, no source: a twentieth for misprints, packs as shops sell them, a slow printer at home. */
    private static final int SPARE_PERCENT = 5;

    private static final int PLAIN_PACK = 500;
    private static final int CARD_PACK = 250;
    private static final int PAGES_A_MINUTE = 10;

    void write(List<Made> made, Outputs outputs) {
        int plans = Math.max(1, (made.size() + PACKETS - 1) / PACKETS);
        for (int plan = 0; plan < plans; plan++) {
            List<Made> counted = made.subList(plan * PACKETS, Math.min((plan + 1) * PACKETS, made.size()));
            String file = plans == 1 ? FILE : FILE.replace(".", "-" + (plan + 1) + ".");
            String part = plans == 1 ? "" : " (plan " + (plan + 1) + " of " + plans + ")";
            publications
                    .printPlan(data(counted, part), problems)
                    .flatMap(pages -> press.print(pages, problems))
                    .ifPresent(pdf -> outputs.add(file, pdf));
        }
    }

    private PrintPlanData data(List<Made> made, String part) {
        Club club = new KeptWords(publications.spelled()).club(roster.club());
        Map<String, File> files = new LinkedHashMap<>();
        List<MemberLine> members = new ArrayList<>();
        for (Made packet : made) {
            List<String> own = new ArrayList<>();
            packet.pages().forEach((name, pages) -> {
                File file = file(packet, name, pages);
                files.merge(file.path(), file, PlanFile::oneMore);
                own.add(file.path());
            });
            packet.job().packet().member().ifPresent(member -> members.add(line(member, packet, own)));
        }
        return new PrintPlanData(
                new PrintPlanData.Show(
                        club.name() + part,
                        club.show().name(),
                        Publications.date(club.show().date())),
                new PrintPlanData.Rates(
                        club.print().plain().currency(),
                        new PrintRates(
                                SPARE_PERCENT,
                                new PrintRates.Rate(club.print().plain().amount(), PLAIN_PACK),
                                new PrintRates.Rate(club.print().card().amount(), CARD_PACK),
                                PAGES_A_MINUTE)),
                List.copyOf(files.values()),
                members,
                roster.rows().sorted().stream()
                        .map(Problem::toString)
                        .map(publications.spelled()::kept)
                        .toList());
    }

    private MemberLine line(Member member, Made packet, List<String> files) {
        Rabbit rabbit = member.rabbits().get(0);
        int cards =
                packet.job().packet().ownCards().size() + packet.job().cards().size();
        return new MemberLine(
                numbers.number(member),
                member.name(),
                member.division().name(),
                member.division().level(),
                new PrintPlanData.Shown(
                        rabbit.name(),
                        rabbit.breedName(),
                        Optional.of(rabbit.earNumber()).filter(ear -> !ear.isEmpty())),
                files,
                cards);
    }

    /** Files of one kind, level and length are one line of the plan. */
    private static File file(Made packet, String name, int pages) {
        String level = packet.job().packet().edition().level().word();
        boolean member = packet.job().packet().member().isPresent();
        String path = member
                ? "packets/*/" + name + ", " + level + setting(packet) + ", " + pages + " pages"
                : packet.job().folder() + name;
        return new File(
                title(name, packet),
                path,
                member ? Use.MEMBERS : Use.CLUB,
                pages,
                PacketPrinter.sides(name),
                name.equals(PacketPress.CARDS) ? Stock.CARD : Stock.PLAIN,
                1,
                after(name),
                Optional.ofNullable(packet.ink().get(name)));
    }

    private static String title(String name, Made packet) {
        String whose = packet.job().packet().member().isPresent() ? "" : ", any rabbit";
        return name.replace(".pdf", "") + whose + ", "
                + packet.job().packet().edition().level().word()
                + setting(packet);
    }

    private static String setting(Made packet) {
        return packet.job().packet().needs().setting().title();
    }

    private static After after(String name) {
        return switch (name) {
            case PacketPress.READ -> After.STAPLE;
            case PacketPress.BOOKLET -> After.BOOKLET;
            case PacketPress.STACK -> After.STACK;
            case PacketPress.POCKET, PacketPress.CUE_CARD -> After.FOLD;
            case PacketPress.CARDS -> After.CARDS;
            case PacketPress.GUIDE -> After.BINDER;
            default -> After.LOOSE;
        };
    }

    private static File oneMore(File one, File other) {
        return new File(
                one.title(),
                one.path(),
                one.use(),
                one.pages(),
                one.sides(),
                one.stock(),
                one.copies() + 1,
                one.after(),
                one.ink().flatMap(ink -> other.ink().map(ink::plus)));
    }
}
