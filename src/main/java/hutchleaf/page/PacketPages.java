package hutchleaf.page;

import hutchleaf.edition.OwnRabbit;
import hutchleaf.edition.Packet;
import hutchleaf.model.Club;
import hutchleaf.model.Fact;
import hutchleaf.model.Level;
import hutchleaf.model.Member;
import hutchleaf.model.PacketWords;
import hutchleaf.model.PacketWords.Heading;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Setting;
import hutchleaf.page.PacketView.CheckList;
import hutchleaf.page.PacketView.FactView;
import hutchleaf.page.PacketView.Letter;
import hutchleaf.page.PacketView.Lists;
import hutchleaf.page.PacketView.RabbitView;
import hutchleaf.page.PacketView.RoutineView;
import hutchleaf.rabbit.Point;
import hutchleaf.sheet.Paper;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Makes the view of a member's reading pages. */
final class PacketPages {
    private static final String FACT = "fact.";
    private static final int LOG_ROWS = 9;

    private final Packet packet;
    private final Level level;
    private final Look look;
    private final FigureViews figures;

    private PacketPages(Packet packet, Look look) {
        this.packet = packet;
        this.level = packet.edition().level();
        this.look = look;
        this.figures = new FigureViews(packet.edition().library().tables().drawings(), level, look);
    }

    static PacketView of(Packet packet, Paper paper) {
        return new PacketPages(
                        packet,
                        Look.of(packet.edition().level(), paper, packet.needs().setting()))
                .view();
    }

    /** On pages of half a sheet. */
    static PacketView booklet(Packet packet, Paper paper) {
        return new PacketPages(packet, Look.half(packet.edition().level(), paper)).view();
    }

    /** What stands at the foot of a member's pages: whose they are, and of which day. */
    static String foot(Packet packet) {
        // Primary's foot and that of large print are set too large for the club's name beside it.
        return packet.edition().level() == Level.PRIMARY || packet.needs().setting() == Setting.LARGE
                ? shortFoot(packet)
                : whose(packet) + " \u00B7 " + packet.club().name() + " \u00B7 " + version(packet);
    }

    private static String shortFoot(Packet packet) {
        return whose(packet) + " \u00B7 " + version(packet);
    }

    private static String whose(Packet packet) {
        return packet.member().map(Member::name).orElse("Any rabbit");
    }

    /** The words that date a packet: all that differs between two printings of the same pages. */
    static String version(Packet packet) {
        return Publications.version(packet.printed());
    }

    private PacketView view() {
        List<RabbitView> rabbits = new ArrayList<>();
        List<RoutineView> routines = new ArrayList<>();
        for (OwnRabbit rabbit : packet.rabbits()) {
            String anchor = "rabbit-" + (rabbits.size() + 1);
            rabbits.add(RabbitPages.of(rabbit, packet, figures, markup(rabbit), anchor));
            routines.add(new RoutineRows(packet, look, rabbit, markup(rabbit)).view("routine-" + rabbits.size()));
        }
        Letter letter = letter();
        return new PacketView(
                look,
                figures.sizes(),
                packet.member().map(Member::name).orElse(""),
                look.frame().half() ? shortFoot(packet) : foot(packet),
                letter,
                rabbits,
                routines,
                PlanPages.of(packet, look),
                lists());
    }

    private Markup markup(OwnRabbit rabbit) {
        return Markup.own(filling(packet, rabbit));
    }

    /** What blanks print in a packet: facts, the member, the club and one rabbit. */
    static Function<String, Optional<String>> filling(Packet packet, OwnRabbit rabbit) {
        return blank -> {
            if (blank.startsWith(FACT)) {
                Fact fact = packet.edition().library().tables().facts().get(blank.substring(FACT.length()));
                return Optional.ofNullable(fact).map(Fact::printed);
            }
            return packet.filling(blank).or(() -> rabbit.findings().filling(blank));
        };
    }

    private Letter letter() {
        Club.Show show = packet.club().show();
        Markup markup = markup(packet.rabbits().get(0));
        long days = ChronoUnit.DAYS.between(packet.plan().start(), show.date());
        return new Letter(
                packet.club().letter().stream()
                        .map(new BlockViews(markup, figures)::block)
                        .toList(),
                facts(),
                show.name(),
                PrintedDate.whole(show.date()),
                days + (days == 1 ? " day" : " days") + " from "
                        + PrintedDate.plain(packet.plan().start()),
                markup.writeAll(words(Heading.HOW_TO_USE)),
                markup.writeAll(words(Heading.GROWN_UP)),
                packet.club().at().toString());
    }

    private List<FactView> facts() {
        OwnRabbit first = packet.rabbits().get(0);
        Optional<Rabbit> rabbit = first.findings().rabbit();
        Optional<Member> member = packet.member();
        List<FactView> facts = new ArrayList<>();
        facts.add(fact(
                "Division",
                member.map(this::division),
                member.map(found -> found.division().why())));
        facts.add(fact("Number at the show", packet.number().map(String::valueOf), Optional.empty()));
        facts.add(fact("Rabbit", rabbit.map(Rabbit::name), Optional.empty()));
        Stream.of(Point.BREED, Point.VARIETY, Point.SHOW_CLASS, Point.EAR_NUMBER, Point.AGE, Point.WEIGHT_CLASS)
                .map(point -> RabbitPages.fact(first.findings(), point, point == Point.SHOW_CLASS))
                .map(fact -> rabbit.isPresent() ? looked(fact) : fact)
                .forEach(facts::add);
        first.findings()
                .classNote()
                .ifPresent(note -> facts.add(
                        new FactView("Mind its age", Optional.of(new Xml(Xml.escape(note))), Optional.empty())));
        return facts;
    }

    /** A fact that is not known says where to look. */
    private FactView looked(FactView fact) {
        return fact.value().isPresent()
                ? fact
                : new FactView(fact.label(), Optional.of(RabbitPages.check(level)), Optional.empty());
    }

    private String division(Member member) {
        Level own = member.division().level();
        String named = member.division().name();
        return own == level ? named : named + ", with the words of " + level.word();
    }

    private static FactView fact(String label, Optional<String> value, Optional<String> note) {
        return new FactView(label, value.map(Xml::escape).map(Xml::new), note);
    }

    private Lists lists() {
        Markup markup = markup(packet.rabbits().get(0));
        List<CheckList> checks = Stream.of(Heading.PACK, Heading.BEFORE, Heading.AT_THE_SHOW, Heading.HOME)
                .map(heading -> new CheckList(heading.text(), markup.writeAll(words(heading))))
                .filter(list -> !list.items().isEmpty())
                .toList();
        return new Lists(checks, markup.writeAll(words(Heading.WITH_THE_RABBIT)), LOG_ROWS);
    }

    private List<hutchleaf.model.Words> words(Heading heading) {
        PacketWords packetWords = packet.edition().library().contest().packet();
        return packetWords.lines(heading, level);
    }
}
