package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.edition.OwnRabbit;
import hutchleaf.edition.Packet;
import hutchleaf.edition.Stop;
import hutchleaf.model.Block;
import hutchleaf.model.HelpWords;
import hutchleaf.model.HelpWords.Heading;
import hutchleaf.model.Member;
import hutchleaf.model.Routine;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Setting;
import hutchleaf.model.Station.SideUp;
import hutchleaf.model.Words;
import hutchleaf.page.HelpView.StopView;
import hutchleaf.sheet.Paper;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Makes the view of the talk-through sheet and the cue card: plain for a level, or with one rabbit's words. */
final class HelpPages {
    private final Edition edition;
    private final Look look;
    private final Markup markup;
    private final BiFunction<Integer, String, String> own;

    /** @param own makes the words of a stop those of one rabbit */
    private HelpPages(Edition edition, Look look, Markup markup, BiFunction<Integer, String, String> own) {
        this.edition = edition;
        this.look = look;
        this.markup = markup;
        this.own = own;
    }

    /** Of a level, with lines to fill. */
    static HelpView of(Edition edition, Paper paper, Setting setting) {
        Look look = Look.of(edition.level(), paper, setting);
        return new HelpPages(edition, look, Markup.unlinked(edition), (stop, words) -> words).view("", look.level());
    }

    /** Of a member and the rabbit to show. */
    static HelpView of(Packet packet, Paper paper) {
        OwnRabbit rabbit = packet.rabbits().get(0);
        Edition edition = packet.edition();
        return new HelpPages(
                        edition,
                        Look.of(edition.level(), paper, packet.needs().setting()),
                        Markup.own(PacketPages.filling(packet, rabbit)),
                        (stop, words) -> rabbit.findings().forRabbit(stop, edition.level(), words))
                .view(packet.member().map(Member::name).orElse(""), PacketPages.foot(packet));
    }

    private HelpView view(String name, String foot) {
        return new HelpView(
                look,
                name,
                foot,
                list(Heading.BEFORE),
                list(Heading.MEMBER),
                list(Heading.HELPER),
                edition.order().stops().stream().anyMatch(this::onItsBack),
                edition.stops().stream().map(this::stop).toList());
    }

    private boolean onItsBack(int stop) {
        Routine routine = edition.library().routine();
        return routine.station(stop).sideUp() == SideUp.BACK
                && edition.order().stops().size() == Routine.STOPS;
    }

    private List<Xml> list(Heading heading) {
        return markup.writeAll(help().list(heading, edition.level()));
    }

    private HelpWords help() {
        return edition.library().contest().help();
    }

    /** The reader of the content has made sure that every stop has its line. */
    private StopView stop(Stop stop) {
        int no = stop.station().no();
        HelpWords.Line line = help().line(no, edition.level())
                .orElseThrow(() -> new IllegalStateException("stop " + no + " has no line"));
        Leaf leaf = stop.leaf();
        return new StopView(
                no,
                stop.station().name(),
                stop.station().shortName(),
                markup.write(line.say()),
                markup.write(line.helper()),
                markup.write(line.look()),
                names(leaf),
                leaf.section(Kind.SAY_IT)
                        .map(Section::text)
                        .map(markup::write)
                        .map(words -> new Xml(own.apply(no, words.text())))
                        .orElse(new Xml("")),
                leaf.section(Kind.CAUTION).map(Section::text).map(markup::write).orElse(new Xml("")),
                line.key(),
                line.at().toString());
    }

    /** What the stop's table calls what is seen: its second column. */
    private static Optional<String> names(Leaf leaf) {
        return leaf.section(Kind.LOOK_FOR)
                .flatMap(section -> section.blocks().stream()
                        .filter(Block.Table.class::isInstance)
                        .map(Block.Table.class::cast)
                        .findFirst())
                .map(table -> table.rows().stream()
                        .filter(row -> row.cells().size() > 1)
                        .map(row -> row.cells().get(1))
                        .map(Words::plain)
                        .distinct()
                        .collect(Collectors.joining(", ")));
    }
}
