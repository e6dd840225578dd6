package hutchleaf.page;

import hutchleaf.model.Block;
import hutchleaf.model.Drawing;
import hutchleaf.model.Drawing.Label;
import hutchleaf.model.Level;
import hutchleaf.page.GuideView.PictureView;
import hutchleaf.sheet.LabelPlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Chooses the drawing for the room there is, and places the words round it. All in millimetres. */
final class FigureViews {
    /** Highest a figure stands on a page, so that text stands with it. */
    static final double HIGHEST = 76;

    /** As high as a figure stands on a page that is nearly full: a drawing too fine for that gives way to its twin. */
    private static final double FULL_PAGE = 52;

    private static final double SINGLE = 80;
    private static final double GAP = 6;

    /** Widest a figure with words on both sides stands. */
    private static final double LABELLED = 100;

    /** In large print the words need more room. */
    private static final double LARGE_LABELLED = 70;

    /** Words start this far from the figure: room for the lines to spread. */
    private static final double REACH = 5;

    /** A line of words is this much higher than its letters. */
    static final double LINE = 1.3;

    static final double POINT = 25.4 / 72;

    private final Map<String, Drawing> drawings;
    private final Level level;
    private final Look look;
    private final Set<PictureView.Size> sizes = new TreeSet<>();

    FigureViews(Map<String, Drawing> drawings, Level level, Look look) {
        this.drawings = drawings;
        this.level = level;
        this.look = look;
    }

    /** Every size that the pictures so far are shown in. */
    List<PictureView.Size> sizes() {
        return List.copyOf(sizes);
    }

    /** Pictures that stand side by side. */
    List<PictureView> row(List<Block.Picture> pictures) {
        return pictures.stream()
                .map(picture -> picture(picture, width(picture, pictures.size()), HIGHEST))
                .toList();
    }

    /** Pictures side by side where the page is wide enough for all of them, else the first alone, else none. */
    List<PictureView> roomFor(List<Block.Picture> pictures) {
        return Stream.of(pictures, pictures.stream().limit(1).toList())
                .filter(this::wideEnough)
                .findFirst()
                .map(this::row)
                .orElse(List.of());
    }

    /** Whether pictures, or their small twins, may be printed as narrow as they would stand side by side. */
    private boolean wideEnough(List<Block.Picture> pictures) {
        return pictures.stream()
                .allMatch(picture -> fitting(drawings, picture.file(), width(picture, pictures.size()), HIGHEST)
                        .isPresent());
    }

    /** How wide a picture stands in a row; alone, one that may not be printed as narrow as others stands across the page. */
    double width(Block.Picture picture, int inARow) {
        if (inARow > 1) {
            return Math.floor((look.frame().text() - GAP * (inARow - 1)) / inARow - 1);
        }
        return drawing(picture.file()).smallest() > SINGLE ? look.frame().live() : SINGLE;
    }

    /** A picture in a frame of a width and at most of a height. */
    PictureView picture(Block.Picture picture, double width, double height) {
        Drawing drawing = fitting(drawings, picture.file(), width, Math.min(height, FULL_PAGE))
                .orElseGet(() -> drawing(picture.file()));
        double high = even(Math.min(width / drawing.ratio(), height));
        double floor = Math.min(high, 2 * Math.ceil(drawing.smallest() / drawing.ratio() / 2));
        PictureView.Size size = new PictureView.Size((int) high, (int) floor);
        sizes.add(size);
        return new PictureView(
                drawing.file(),
                picture.alt(),
                picture.caption(),
                width,
                size,
                picture.use() == Block.Picture.Use.LABELS
                        ? Optional.of(labelled(drawing(picture.file())))
                        : Optional.empty());
    }

    private Drawing drawing(String file) {
        return drawings.getOrDefault(file, new Drawing(file, 1, 1, 0, List.of()));
    }

    /** The drawing itself where it is wide enough there, else its small twin; empty where neither may be printed so narrow. */
    static Optional<Drawing> fitting(Map<String, Drawing> drawings, String file, double width, double height) {
        return Optional.ofNullable(drawings.get(file))
                .filter(drawing -> Math.min(width, height * drawing.ratio()) >= drawing.smallest())
                .or(() -> Optional.ofNullable(drawings.get(Drawing.small(file)))
                        .filter(drawing -> Math.min(width, height * drawing.ratio()) >= drawing.smallest()));
    }

    private static double even(double millimetres) {
        return Math.max(2, 2 * Math.floor(millimetres / 2));
    }

    /** As it stands on a page of the guide. */
    PictureView.Labelled labelled(Drawing drawing) {
        double widest = look.set().large() ? LARGE_LABELLED : LABELLED;
        double width = Math.min(widest, HIGHEST * drawing.ratio());
        double pitch = look.type().note() * LINE * POINT;
        return labelled(
                drawing, Math.max(width, drawing.smallest()), look.frame().live(), pitch);
    }

    /**
     * A figure with its words beside it.
     *
     * @param width of the figure
     * @param room of figure and words
     * @param pitch from one word to the next
     */
    PictureView.Labelled labelled(Drawing drawing, double width, double room, double pitch) {
        double height = width / drawing.ratio();
        double scale = width / drawing.width();
        List<Label> labels = drawing.labels(level);
        List<LabelPlan.Place> places = LabelPlan.of(
                labels.stream()
                        .map(label -> new LabelPlan.Spot(label.x() * scale, label.y() * scale))
                        .toList(),
                width,
                height,
                pitch,
                REACH);
        double above = -places.stream()
                .mapToDouble(place -> place.port().y() - pitch / 2)
                .min()
                .orElse(0);
        double top = Math.max(0, above);
        double below = places.stream()
                .mapToDouble(place -> place.port().y() + pitch / 2)
                .max()
                .orElse(height);
        double left = (room - width) / 2;
        List<PictureView.Named> named = places.stream()
                .map(place -> named(labels.get(place.index()), place, left, top))
                .toList();
        return new PictureView.Labelled(
                drawing.file(), room, top + Math.max(height, below), left, top, width, height, named);
    }

    private static PictureView.Named named(Label label, LabelPlan.Place place, double left, double top) {
        return new PictureView.Named(
                label.word(),
                place.side() == LabelPlan.Side.LEFT,
                left + place.port().x(),
                top + place.port().y(),
                left + place.end().x(),
                top + place.end().y());
    }
}
