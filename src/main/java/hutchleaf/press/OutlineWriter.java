package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The outline of a bound file: the bookmarks of each part, one after another. */
final class OutlineWriter {
    /** A bookmark with its number in the file, and the part it came with: one part may stand in a file twice. */
    private record Line(int number, Bookmark bookmark, Gathering part, List<Line> below) {
        String reference() {
            return number + " 0 R";
        }
    }

    private final List<Line> top = new ArrayList<>();
    private final int first;
    private int next;

    /**
     * Numbers the bookmarks.
     *
     * @param parts in the order of their pages
     * @param first the number of the first bookmark
     */
    OutlineWriter(List<Gathering> parts, int first) {
        this.first = first;
        this.next = first;
        for (Gathering part : parts) {
            top.addAll(lines(part.part().contents().bookmarks(), part));
        }
    }

    private List<Line> lines(List<Bookmark> bookmarks, Gathering part) {
        List<Line> lines = new ArrayList<>();
        for (Bookmark bookmark : bookmarks) {
            lines.add(new Line(next++, bookmark, part, lines(bookmark.below(), part)));
        }
        return lines;
    }

    /** How many numbers it needs; nought when no part has a bookmark. */
    int size() {
        return next - first;
    }

    void write(Numbered glue) {
        if (!top.isEmpty()) {
            int shown = Bookmark.allShown(top.stream().map(Line::bookmark).toList());
            String root = "<</Type/Outlines" + ends(top) + "/Count " + shown + ">>";
            glue.add(Binder.OUTLINE, root.getBytes(StandardCharsets.US_ASCII));
            write(top, Binder.OUTLINE, glue);
        }
    }

    private static String ends(List<Line> lines) {
        return "/First " + lines.get(0).reference() + "/Last "
                + lines.get(lines.size() - 1).reference();
    }

    private void write(List<Line> lines, int parent, Numbered glue) {
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Piece.ascii(out, "<</Title");
            Pieces.string(out, line.bookmark().title());
            String before = i > 0 ? "/Prev " + lines.get(i - 1).reference() : "";
            String after = i + 1 < lines.size() ? "/Next " + lines.get(i + 1).reference() : "";
            Piece.ascii(out, "/Parent " + parent + " 0 R" + before + after + place(line) + below(line) + ">>");
            glue.add(line.number(), out.toByteArray());
            write(line.below(), line.number(), glue);
        }
    }

    private static String place(Line line) {
        Bookmark bookmark = line.bookmark();
        String tag = bookmark.tag().isPresent()
                ? "/SE " + line.part().number(bookmark.tag().getAsInt()) + " 0 R"
                : "";
        return tag + "/Dest[" + line.part().number(bookmark.page()) + " 0 R" + bookmark.view() + "]";
    }

    private static String below(Line line) {
        if (line.below().isEmpty()) {
            return "";
        }
        int shown = Bookmark.allShown(line.bookmark().below());
        return ends(line.below()) + "/Count " + (line.bookmark().open() ? shown : -shown);
    }
}
