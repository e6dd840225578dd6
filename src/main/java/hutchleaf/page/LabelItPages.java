package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Drawing;
import hutchleaf.model.LabelIt;
import hutchleaf.model.Setting;
import hutchleaf.page.GuideView.PictureView.Labelled;
import hutchleaf.page.GuideView.PictureView.Named;
import hutchleaf.page.LabelItView.Disc;
import hutchleaf.page.LabelItView.Numbered;
import hutchleaf.page.LabelItView.Sheet;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Lays out the figures that a level labels. Millimetres throughout. */
final class LabelItPages {
    /** With fewer parts there is nothing to learn from. */
    private static final int FEWEST = 3;

    private static final double LARGE = 118;
    private static final double HIGHEST = 84;
    private static final double NAMED = 100;
    private static final double NAMED_HIGHEST = 130;
    private static final double LARGEST_WORD = 12;
    private static final double KEY = 70;
    private static final double KEY_HIGHEST = 62;
    private static final double KEY_ROOM = 104;

    /** A disc has a radius of 3.4; two do not touch. */
    private static final double DISC_PITCH = 7.2;

    private static final double DISC_OFF = 3.4;

    /** A number of 18 pt needs more room. */
    private static final double LARGE_DISC = 5;

    private static final double LARGE_PITCH = 10.6;
    private static final double LARGE_NAMED = 70;
    private static final double LINE = 11;
    private static final double LOWEST_LINE = 8.5;

    /** Heights of title and word bank. */
    private static final double REST = 56;

    private final Edition edition;
    private final Look look;
    private final boolean large;
    private final FigureViews figures;

    private LabelItPages(Edition edition, Paper paper, Setting setting) {
        this.edition = edition;
        this.look = Look.of(edition.level(), paper, setting);
        this.large = setting == Setting.LARGE;
        this.figures = new FigureViews(edition.library().tables().drawings(), edition.level(), look);
    }

    static LabelItView of(Edition edition, Paper paper, Setting setting) {
        return new LabelItPages(edition, paper, setting).view();
    }

    private LabelItView view() {
        Map<String, Drawing> drawings = edition.library().tables().drawings();
        List<Sheet> sheets = new ArrayList<>();
        for (LabelIt row : edition.library().tables().labelIt()) {
            Drawing drawing = drawings.get(row.figure());
            if (drawing != null
                    && row.from().compareTo(edition.level()) <= 0
                    && drawing.labels(edition.level()).size() >= FEWEST) {
                sheets.add(sheet(row, drawing, sheets.size() + 1));
            }
        }
        return new LabelItView(look, word(), sheets);
    }

    private Sheet sheet(LabelIt row, Drawing drawing, int no) {
        Numbered blank = numbered(
                drawing,
                Math.min(LARGE, HIGHEST * drawing.ratio()),
                look.frame().live());
        int rows = (blank.discs().size() + 1) / 2;
        double left = look.frame().liveHeight() - REST - blank.figure().boxHeight();
        List<String> answers = new ArrayList<>();
        blank.discs().forEach(disc -> answers.add(""));
        List<Named> named = blank.figure().named();
        for (int i = 0; i < named.size(); i++) {
            answers.set(blank.discs().get(i).number() - 1, named.get(i).word());
        }
        List<String> bank = new ArrayList<>(answers);
        Collections.sort(bank, String.CASE_INSENSITIVE_ORDER);
        return new Sheet(
                "figure-" + no,
                row.title(),
                alt(drawing),
                named(drawing),
                blank,
                Math.max(LOWEST_LINE, Math.min(LINE, left / Math.max(1, rows))),
                numbered(drawing, Math.max(drawing.smallest(), Math.min(KEY, KEY_HIGHEST * drawing.ratio())), KEY_ROOM),
                answers,
                bank);
    }

    /** What a reader who cannot see the figure is told: its parts, in the order of the page. */
    private String alt(Drawing drawing) {
        List<String> words = drawing.labels(edition.level()).stream()
                .map(Drawing.Label::word)
                .toList();
        return "A drawing whose parts are to be named: " + words.size() + " of them.";
    }

    /** Words as large as the text, at most {@link #LARGEST_WORD}; in large print always as large. */
    private double word() {
        return large ? look.type().body() : Math.min(look.type().body(), LARGEST_WORD);
    }

    private Labelled named(Drawing drawing) {
        double width =
                Math.max(drawing.smallest(), Math.min(large ? LARGE_NAMED : NAMED, NAMED_HIGHEST * drawing.ratio()));
        return figures.labelled(drawing, width, look.frame().live(), word() * FigureViews.LINE * FigureViews.POINT);
    }

    private Numbered numbered(Drawing drawing, double width, double room) {
        Labelled figure =
                figures.labelled(drawing, Math.max(width, drawing.smallest()), room, large ? LARGE_PITCH : DISC_PITCH);
        List<Named> named = figure.named();
        List<Integer> clockwise = clockwise(named);
        List<Disc> discs = new ArrayList<>();
        double radius = large ? LARGE_DISC : DISC_OFF;
        for (int i = 0; i < named.size(); i++) {
            Named part = named.get(i);
            discs.add(new Disc(
                    clockwise.indexOf(i) + 1, part.portX() + (part.onLeft() ? -radius : radius), part.portY()));
        }
        return new Numbered(figure, radius, discs);
    }

    /** The parts in the order of the clock, from the ear where there is one: down the right side, up the left. */
    private static List<Integer> clockwise(List<Named> named) {
        List<Integer> right = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < named.size(); i++) {
            (named.get(i).onLeft() ? left : right).add(i);
        }
        Collections.reverse(left);
        List<Integer> order = new ArrayList<>(right);
        order.addAll(left);
        for (int i = 0; i < order.size(); i++) {
            if (named.get(order.get(i)).word().equals("ear")) {
                Collections.rotate(order, -i);
                break;
            }
        }
        return order;
    }
}
