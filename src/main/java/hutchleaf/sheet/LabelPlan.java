package hutchleaf.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where the words of a figure stand: in a column on each side of it, and each joined to its part by a straight line. All in
 * millimetres from the upper left corner of the figure, y down.
 *
 * <p>No two lines cross. On each side the line ends are given out from the top: the topmost end takes the part whose line
 * leaves all other parts below it (one-sided boundary labelling with straight leaders; Bekos, Kaufmann, Symvonis and Wolff,
 * Computational Geometry 36, 2007).
 */
public final class LabelPlan {
    /** Which column a word stands in. */
    public enum Side {
        LEFT,
        RIGHT
    }

    /** A point of the figure. */
    public record Spot(double x, double y) {}

    /**
     * One word's place.
     *
     * @param index which of the parts that were given, from 0
     * @param port where its line starts, beside the word
     * @param end the part, where its line ends
     */
    public record Place(int index, Side side, Spot port, Spot end) {}

    private final double width;
    private final double height;
    private final double pitch;
    private final double reach;

    private LabelPlan(double width, double height, double pitch, double reach) {
        this.width = width;
        this.height = height;
        this.pitch = pitch;
        this.reach = reach;
    }

    /**
     * Plans the words of a figure.
     *
     * @param parts where the lines end
     * @param width of the figure
     * @param height of the figure
     * @param pitch least distance of two words of a column
     * @param reach how far outside the figure the lines start
     * @return a place for each part, top to bottom, the left column first; ports may lie above or below the figure where a
     *     column is taller than it
     */
    public static List<Place> of(List<Spot> parts, double width, double height, double pitch, double reach) {
        return new LabelPlan(width, height, pitch, reach).plan(parts);
    }

    private List<Place> plan(List<Spot> parts) {
        record Part(int index, Spot spot) {}
        List<Part> byX = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            byX.add(new Part(i, parts.get(i)));
        }
        byX.sort(Comparator.comparingDouble((Part part) -> part.spot().x())
                .thenComparingDouble(part -> part.spot().y()));
        int half = (byX.size() + 1) / 2;
        List<Place> places = new ArrayList<>();
        for (Side side : Side.values()) {
            List<Part> mine = side == Side.LEFT ? byX.subList(0, half) : byX.subList(half, byX.size());
            List<Integer> indices = mine.stream().map(Part::index).toList();
            places.addAll(column(side, indices, mine.stream().map(Part::spot).toList()));
        }
        return places;
    }

    private List<Place> column(Side side, List<Integer> indices, List<Spot> spots) {
        List<Double> ports = ports(spots);
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            left.add(i);
        }
        double x = side == Side.LEFT ? -reach : width + reach;
        List<Place> places = new ArrayList<>();
        for (double y : ports) {
            Spot port = new Spot(x, y);
            Integer next = left.stream()
                    .min(Comparator.comparingDouble(i -> slope(port, spots.get(i))))
                    .orElseThrow();
            left.remove(next);
            places.add(new Place(indices.get(next), side, port, spots.get(next)));
        }
        return places;
    }

    /** How steeply a line falls from its port to a part. */
    private static double slope(Spot port, Spot part) {
        return (part.y() - port.y()) / Math.max(0.01, Math.abs(part.x() - port.x()));
    }

    /** Heights of the line ends: as near to the parts' own heights as the pitch allows, inside the figure if there is room. */
    private List<Double> ports(List<Spot> spots) {
        List<Double> ports =
                new ArrayList<>(spots.stream().map(Spot::y).sorted().toList());
        double needed = pitch * Math.max(0, ports.size() - 1);
        double top = Math.min(pitch / 2, (height - needed) / 2);
        double bottom = Math.max(height - pitch / 2, (height + needed) / 2);
        for (int i = 0; i < ports.size(); i++) {
            double least = i == 0 ? top : ports.get(i - 1) + pitch;
            ports.set(i, Math.max(ports.get(i), least));
        }
        for (int i = ports.size() - 1; i >= 0; i--) {
            double most = i == ports.size() - 1 ? bottom : ports.get(i + 1) - pitch;
            ports.set(i, Math.min(ports.get(i), most));
        }
        return ports;
    }
}
