package hutchleaf.page;

import hutchleaf.edition.OwnRabbit;
import hutchleaf.edition.Packet;
import hutchleaf.edition.Stop;
import hutchleaf.model.Level;
import hutchleaf.model.Order;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Station;
import hutchleaf.page.PacketView.PocketPanel;
import hutchleaf.page.PacketView.PocketSide;
import hutchleaf.page.PacketView.PocketStop;
import hutchleaf.page.PacketView.RoutinePage;
import hutchleaf.page.PacketView.RoutineView;
import hutchleaf.page.PacketView.StopRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The routine with one rabbit's words: cut into pages, and in key words for the pocket. */
final class RoutineRows {
    /** What an adult does at a stop stands in the topic under this heading. */
    private static final String GROWN_UP = "With a grown-up";

    private static final int FIRST_ON_BACK = 5;
    private static final int LAST_ON_BACK = 13;

    /** Width of the column of words, in millimetres, and of a letter as a part of its size. */
    private static final double SAY_WIDTH = 102;

    private static final double DO_WIDTH = 58;
    private static final double LETTER = 0.5;

    /** Heights that are there on every page, in millimetres: title, strip, rule. */
    private static final double HEAD = 44;

    private static final double ROW_AIR = 9;
    private static final int PANELS = 4;

    private final Packet packet;
    private final Look look;
    private final OwnRabbit rabbit;
    private final Markup markup;
    private final Level level;

    RoutineRows(Packet packet, Look look, OwnRabbit rabbit, Markup markup) {
        this.packet = packet;
        this.look = look;
        this.rabbit = rabbit;
        this.markup = markup;
        this.level = packet.edition().level();
    }

    RoutineView view(String anchor) {
        List<StopRow> rows = packet.edition().stops().stream().map(this::row).toList();
        return new RoutineView(
                anchor, rabbit.findings().rabbit().map(Rabbit::name).orElse(""), pages(rows), pocket(), upright());
    }

    private StopRow row(Stop stop) {
        Station station = stop.station();
        return new StopRow(
                station.no(),
                station.name(),
                station.doing(),
                grownUp(stop),
                said(stop, Kind.SAY_IT).orElse(new Xml("")),
                said(stop, Kind.IF_YOU_FIND_IT),
                stop.leaf().head().credits().at().toString());
    }

    private Optional<Xml> said(Stop stop, Kind kind) {
        return stop.leaf()
                .section(kind)
                .map(Section::text)
                .map(markup::write)
                .map(xml -> new Xml(rabbit.findings().forRabbit(stop.station().no(), level, xml.text())));
    }

    private Optional<Xml> grownUp(Stop stop) {
        return stop.leaf().sections().stream()
                .filter(section -> section.heading().equals(GROWN_UP))
                .findFirst()
                .map(Section::text)
                .map(markup::write);
    }

    /** As many stops on a page as it holds; the page is fitted when it is laid out. */
    private List<RoutinePage> pages(List<StopRow> rows) {
        double room = look.frame().liveHeight() - HEAD;
        List<RoutinePage> pages = new ArrayList<>();
        List<StopRow> open = new ArrayList<>();
        double used = 0;
        for (StopRow row : rows) {
            double height = height(row);
            if (!open.isEmpty() && used + height > room) {
                pages.add(page(open));
                open.clear();
                used = 0;
            }
            open.add(row);
            used += height;
        }
        pages.add(page(open));
        return pages;
    }

    private static RoutinePage page(List<StopRow> rows) {
        boolean back = rows.stream().anyMatch(row -> row.no() >= FIRST_ON_BACK && row.no() <= LAST_ON_BACK);
        return new RoutinePage(
                List.copyOf(rows),
                back,
                "stops " + rows.get(0).no() + " to " + rows.get(rows.size() - 1).no());
    }

    /** About how high a row stands, in millimetres. */
    private double height(StopRow row) {
        double line = look.type().body() * look.type().line() * FigureViews.POINT;
        int left = 1
                + lines(row.doing().length(), DO_WIDTH)
                + row.grownUp().map(xml -> lines(plain(xml), DO_WIDTH)).orElse(0);
        int right = lines(plain(row.say()), SAY_WIDTH);
        int found = row.ifFound().map(xml -> lines(plain(xml) + 24, SAY_WIDTH)).orElse(0);
        double bubbles = right * line * 1.04 + 5 + (found > 0 ? found * line + 2 : 0);
        return Math.max(left * line, bubbles) + ROW_AIR;
    }

    private int lines(int letters, double width) {
        double perLine = width / (look.type().body() * FigureViews.POINT * LETTER);
        return (int) Math.ceil(letters / perLine);
    }

    private static int plain(Xml xml) {
        return xml.text().replaceAll("<[^>]*>", "").length();
    }

    /** A cover, the stops in key words, and what to do when stuck: four panels a side. */
    private List<PocketSide> pocket() {
        List<PocketStop> stops = packet.edition().stops().stream()
                .map(stop -> new PocketStop(stop.station().no(), stop.station().shortName(), key(stop.station())))
                .toList();
        int panels = 2 * PANELS - 2;
        List<PocketPanel> all = new ArrayList<>();
        all.add(new PocketPanel("cover", List.of()));
        for (int panel = 0; panel < panels; panel++) {
            all.add(new PocketPanel(
                    "stops", stops.subList(panel * stops.size() / panels, (panel + 1) * stops.size() / panels)));
        }
        all.add(new PocketPanel("stuck", List.of()));
        return List.of(new PocketSide(all.subList(0, PANELS)), new PocketSide(all.subList(PANELS, 2 * PANELS)));
    }

    /** The key words of a stop, with this rabbit's own first. */
    private String key(Station station) {
        String own = rabbit.findings().lines().stream()
                .filter(line -> line.stop() == station.no())
                .map(line -> rabbit.findings().filling(line.point().blank()))
                .flatMap(Optional::stream)
                .filter(words -> words.length() <= 24)
                .limit(2)
                .collect(Collectors.joining(", "));
        return own.isEmpty() ? station.pocket() : own + "; " + station.pocket();
    }

    /** When and how the upright order serves; empty where it is the order of the level anyway. */
    private String upright() {
        return packet.edition().library().routine().orders().stream()
                .filter(order -> !order.equals(packet.edition().order()))
                .filter(order -> order.levels().holds(level))
                .map(Order::stops)
                .map(stops -> stops.stream().map(String::valueOf).collect(Collectors.joining(", ")))
                .findFirst()
                .orElse("");
    }
}
