package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Binds parts into one PDF (ISO 32000-1:2008): their objects as they are, and what holds them together. */
final class Binder {
    static final int CATALOG = 1;
    static final int PAGES = 2;
    static final int TAGS = 3;
    static final int DOCUMENT = 4;
    static final int OUTLINE = 5;
    static final int INFORMATION = 6;
    static final int METADATA = 7;
    static final int FIRST_NUMBER = 8;

    private static final byte[] HEADER = "%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n".getBytes(StandardCharsets.ISO_8859_1);

    private final String title;
    private final String language;

    /** In the order of their pages. */
    private final List<Part> parts;

    /** In the order of their numbers. */
    private final List<Gathering> gatherings = new ArrayList<>();

    /** In the order of their pages. */
    private final List<Gathering> inOrder = new ArrayList<>();

    private int next = FIRST_NUMBER;
    private int nextKey;

    private Binder(String title, String language, List<Part> parts) {
        this.title = title;
        this.language = language;
        this.parts = parts;
    }

    /**
     * The bound file.
     *
     * @param parts one or more, in the order of their pages
     */
    static byte[] bind(String title, String language, List<Part> parts) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("nothing to bind");
        }
        return new Binder(title, language, parts).bind();
    }

    private byte[] bind() {
        gather();
        ByteArrayOutputStream file = new ByteArrayOutputStream(gatherings.stream()
                        .mapToInt(gathering -> gathering.written().size())
                        .sum()
                + (1 << 16));
        file.writeBytes(HEADER);
        Crossings crossings = new Crossings();
        for (Gathering gathering : gatherings) {
            crossings.add(gathering.written(), file);
        }
        crossings.add(glue(), file);
        crossings.finish(
                file, "/Root " + CATALOG + " 0 R/Info " + INFORMATION + " 0 R/ID[" + identity() + identity() + "]");
        return file.toByteArray();
    }

    /** Writes the largest part first: it is the one that other files share, so that its written form is kept, and its
     * fonts are the likeliest to cover others. */
    private void gather() {
        List<Integer> places = IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparingInt(place -> -parts.get(place).weight()))
                .toList();
        Map<Integer, Gathering> byPlace = new TreeMap<>();
        for (int place : places) {
            Part part = parts.get(place);
            Gathering gathering =
                    gatherings.isEmpty() ? part.first() : Gathering.of(part, next, nextKey, List.copyOf(gatherings));
            gatherings.add(gathering);
            byPlace.put(place, gathering);
            next = gathering.written().next();
            nextKey += part.contents().owners().size();
        }
        inOrder.addAll(byPlace.values());
    }

    private Numbered glue() {
        OutlineWriter outline = new OutlineWriter(inOrder, next);
        Numbered glue = new Numbered(next + outline.size());
        add(glue, CATALOG, catalog(outline.size() > 0));
        add(glue, PAGES, pages());
        add(glue, TAGS, tags());
        add(glue, DOCUMENT, document());
        outline.write(glue);
        glue.add(INFORMATION, information());
        glue.add(
                METADATA,
                "/Type/Metadata/Subtype/XML",
                Finish.xmp(title, language).getBytes(StandardCharsets.UTF_8));
        glue.finish();
        return glue;
    }

    private static void add(Numbered glue, int number, String text) {
        glue.add(number, text.getBytes(StandardCharsets.US_ASCII));
    }

    private String catalog(boolean outlined) {
        return "<</Type/Catalog/Version/1.7/Pages " + PAGES + " 0 R/Lang(" + language + ")/MarkInfo<</Marked true>>"
                + "/StructTreeRoot " + TAGS + " 0 R/Metadata " + METADATA + " 0 R"
                + "/ViewerPreferences<</DisplayDocTitle true>>"
                + (outlined ? "/Outlines " + OUTLINE + " 0 R>>" : ">>");
    }

    private String pages() {
        StringBuilder kids = new StringBuilder();
        int count = 0;
        for (Gathering gathering : inOrder) {
            kids.append(gathering.number(Part.PAGES)).append(" 0 R ");
            count += gathering.part().contents().pages();
        }
        return "<</Type/Pages/Count " + count + "/Kids[" + kids + "]>>";
    }

    private String document() {
        StringBuilder kids = new StringBuilder();
        for (Gathering gathering : inOrder) {
            kids.append(gathering.number(Part.TAGS)).append(" 0 R ");
        }
        return "<</Type/StructElem/S/Document/P " + TAGS + " 0 R/Lang(" + language + ")/K[" + kids + "]>>";
    }

    private String tags() {
        StringBuilder owners = new StringBuilder();
        int key = 0;
        for (Gathering gathering : gatherings) {
            for (int owner : gathering.part().contents().owners()) {
                owners.append(key++).append(' ').append(gathering.number(owner)).append(" 0 R ");
            }
        }
        return "<</Type/StructTreeRoot/K[" + DOCUMENT + " 0 R]/ParentTreeNextKey " + nextKey + roles()
                + "/ParentTree<</Nums[" + owners + "]>>>>";
    }

    private String roles() {
        Map<String, String> all = new TreeMap<>();
        for (Part part : parts) {
            part.contents().roles().forEach((role, means) -> {
                if (!all.computeIfAbsent(role, key -> means).equals(means)) {
                    throw new IllegalStateException("two parts mean different things by the tag " + role);
                }
            });
        }
        StringBuilder text = new StringBuilder();
        all.forEach((role, means) -> text.append('/').append(role).append('/').append(means));
        return all.isEmpty() ? "" : "/RoleMap<<" + text + ">>";
    }

    private byte[] information() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Piece.ascii(
                out,
                "<</Producer(" + Finish.PRODUCER + ")/CreationDate" + Finish.PDF_DATE + "/ModDate" + Finish.PDF_DATE);
        Piece.ascii(out, "/Title");
        Pieces.string(out, title);
        Piece.ascii(out, ">>");
        return out.toByteArray();
    }

    /** From what went in, so that the same parts give the same file. */
    private String identity() {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes((title + "\0" + language).getBytes(StandardCharsets.UTF_8));
        parts.forEach(part -> all.writeBytes(part.digest()));
        return "<" + HexFormat.of().formatHex(Digest.of(all.toByteArray()), 0, 16) + ">";
    }
}
