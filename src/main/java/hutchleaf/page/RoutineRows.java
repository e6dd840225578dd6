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
import hutchleaf.rabbit.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The routine with one rabbit's words: cut into pages, and in key words for the pocket. */
final class RoutineRows {
    /** What an adult does at a stop stands in the topic under this heading. */
    private static final String GROWN_UP = "With a grown-up";

    private static final int FIRST_ON_BACK = 5;

    /**
     * Where the words stand, in millimetres.
     *
     * @param doing width of what the hands do
     * @param saying width of what is said
     * @param beside whether one stands beside the other, or above it
     * @param head height of what is on every page: title and stop rule
     * @param strip height of what is on the first page besides
     */
    private record Columns(double doing, double saying, boolean beside, double head, double strip) {
        private static Columns of(Look look) {
            return look.frame().half()
                    ? new Columns(look.frame().live(), look.frame().live() - BUBBLE_SIDES, false, 38, 0)
                    : new Columns(58, 102, true, 26, 13);
        }
    }

    /** Width of a letter as a part of its size. */
    private static final double LETTER = 0.445;

    /** Left and right padding of a bubble, in millimetres. */
    private static final double BUBBLE_SIDES = 8;

    /** Line height of the rows as a multiple of their size; padding of a bubble and the gap between two, in millimetres. */
    private static final double LINE = 1.3;

    private static final double BUBBLE = 3.2;
    private static final double BUBBLE_GAP = 1.6;

    private static final double ROW_AIR = 4.4;
    private static final int PANELS = 4;

    /** What a member must not forget about this rabbit. */
    private static final List<Point> POCKET = List.of(
            Point.BODY_TYPE,
            Point.VARIETY,
            Point.BREED,
            Point.EARS,
            Point.EAR_NUMBER,
            Point.EYE,
            Point.NAILS,
            Point.FUR);

    private final Packet packet;
    private final Look look;
    private final OwnRabbit rabbit;
    private final Markup markup;
    private final Level level;
    private final Columns columns;

    RoutineRows(Packet packet, Look look, OwnRabbit rabbit, Markup markup) {
        this.packet = packet;
        this.look = look;
        this.rabbit = rabbit;
        this.markup = markup;
        this.level = packet.edition().level();
        this.columns = Columns.of(look);
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
                doing(station),
                grownUp(stop),
                said(stop, Kind.SAY_IT).orElse(new Xml("")),
                said(stop, Kind.IF_YOU_FIND_IT),
                stop.leaf().head().credits().at().toString());
    }

    /** What the hands do; at the turn with the words of the club's leader, who teaches the hold. */
    private String doing(Station station) {
        String grip = packet.club().practice().grip();
        return station.no() == FIRST_ON_BACK && !grip.isEmpty()
                ? station.doing() + " Our hold: " + grip.replaceFirst("\\.$", "") + "."
                : station.doing();
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

    /** On as few pages as hold the stops, about as many on each; the page is fitted when it is laid out. */
    private List<RoutinePage> pages(List<StopRow> rows) {
        if (look.set().open()) {
            return RoutineParts.of(rows);
        }
        double most = look.frame().liveHeight() - columns.head();
        int pages = split(rows, most).size();
        double all = rows.stream().mapToDouble(this::height).sum() + columns.strip();
        double room = all / pages;
        while (split(rows, room).size() > pages) {
            room += ROW_AIR;
        }
        return split(rows, Math.min(room, most)).stream().map(RoutineRows::page).toList();
    }

    private List<List<StopRow>> split(List<StopRow> rows, double room) {
        List<List<StopRow>> pages = new ArrayList<>();
        List<StopRow> open = new ArrayList<>();
        double used = columns.strip();
        for (StopRow row : rows) {
            double height = height(row);
            if (!open.isEmpty() && used + height > room) {
                pages.add(List.copyOf(open));
                open.clear();
                used = 0;
            }
            open.add(row);
            used += height;
        }
        pages.add(List.copyOf(open));
        return pages;
    }

    static RoutinePage page(List<StopRow> rows) {
        boolean back = rows.stream().anyMatch(RoutineParts::onBack);
        return new RoutinePage(
                List.copyOf(rows),
                back,
                "stops " + rows.get(0).no() + " to " + rows.get(rows.size() - 1).no());
    }

    /** About how high a row stands, in millimetres. */
    private double height(StopRow row) {
        double line = look.type().body() * LINE * FigureViews.POINT;
        int left = 1
                + lines(row.doing().length(), columns.doing())
                + row.grownUp()
                        .map(xml -> lines(plain(xml) + 10, columns.doing()))
                        .orElse(0);
        double say = lines(plain(row.say()) + 2, columns.saying()) * line + BUBBLE;
        double found = row.ifFound()
                .map(xml -> lines(plain(xml) + 26, columns.saying()) * line + BUBBLE + BUBBLE_GAP)
                .orElse(0.0);
        return (columns.beside() ? Math.max(left * line, say + found) : left * line + say + found) + ROW_AIR;
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

    /** The key words of a stop: this rabbit's own, then what the hands and eyes do. */
    private String key(Station station) {
        List<String> own = POCKET.stream()
                .filter(point -> point.stop() == station.no())
                .map(point -> rabbit.findings().filling(point.blank()))
                .flatMap(Optional::stream)
                .toList();
        Optional<String> sex = rabbit.findings().filling(Point.SEX.blank());
        if (station.no() == Point.SEX_CHECK.stop() && sex.isPresent()) {
            return sex.get();
        }
        return own.isEmpty() ? station.pocket() : String.join(", ", own) + "; " + station.pocket();
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
