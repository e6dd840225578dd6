package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.COSWriter;
import org.jspecify.annotations.Nullable;

/** Writes the objects of an opened PDF as pieces, numbered from nought in the order in which they are met. */
final class Pieces {
    private final IdentityHashMap<COSBase, Integer> numbers = new IdentityHashMap<>();
    private final IdentityHashMap<COSBase, Integer> fixed = new IdentityHashMap<>();
    private final List<COSBase> objects = new ArrayList<>();

    /** Gives an object its number before anything is written. */
    int reserve(COSBase object) {
        return numbers.computeIfAbsent(object, key -> {
            objects.add(object);
            return objects.size() - 1;
        });
    }

    /** Lets an object stand under a number of the bound file, written by the binder. */
    void fix(COSBase object, int number) {
        fixed.put(object, number);
    }

    /** The number of an object that was reserved or written; null when it was not. */
    @Nullable
    Integer number(COSBase object) {
        return numbers.get(object);
    }

    /** The fonts among the objects met so far, by their numbers. */
    SortedMap<Integer, COSDictionary> fonts() {
        SortedMap<Integer, COSDictionary> fonts = new TreeMap<>();
        for (int i = 0; i < objects.size(); i++) {
            if (objects.get(i) instanceof COSDictionary font && COSName.FONT.equals(font.getCOSName(COSName.TYPE))) {
                fonts.put(i, font);
            }
        }
        return fonts;
    }

    /** Writes all that was reserved, and all that it leads to. */
    List<Piece> write() throws IOException {
        List<Piece> pieces = new ArrayList<>();
        // Writing finds further objects.
        for (int i = 0; i < objects.size(); i++) {
            pieces.add(new Writer().piece(objects.get(i)));
        }
        return pieces;
    }

    /** Writes a string as PDF does. */
    static void string(ByteArrayOutputStream out, String text) {
        try {
            COSWriter.writeString(new COSString(text), out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory cannot fail", e);
        }
    }

    /** Writes a name, a string, a number, a truth or nothing as PDF does. */
    static void simple(ByteArrayOutputStream out, @Nullable COSBase object) throws IOException {
        if (object instanceof COSName name) {
            name.writePDF(out);
        } else if (object instanceof COSString string) {
            COSWriter.writeString(string, out);
        } else if (object instanceof COSInteger number) {
            number.writePDF(out);
        } else if (object instanceof COSFloat number) {
            number.writePDF(out);
        } else if (object instanceof COSBoolean truth) {
            truth.writePDF(out);
        } else if (object == null || object == COSNull.NULL) {
            Piece.ascii(out, "null");
        } else {
            throw new IllegalStateException("not a simple object: " + object);
        }
    }

    /** Writes one object. */
    private final class Writer {
        private final ByteArrayOutputStream out = new ByteArrayOutputStream();
        private final List<Integer> gaps = new ArrayList<>();
        private final List<Integer> targets = new ArrayList<>();

        Piece piece(COSBase object) throws IOException {
            if (object instanceof COSStream stream) {
                entries(stream, true);
                try (InputStream data = stream.createRawInputStream()) {
                    return Piece.stream(out.toByteArray(), ints(gaps), ints(targets), data.readAllBytes());
                }
            }
            whole(object);
            return Piece.object(out.toByteArray(), ints(gaps), ints(targets));
        }

        private static int[] ints(List<Integer> list) {
            return list.stream().flatMapToInt(IntStream::of).toArray();
        }

        private void value(@Nullable COSBase value) throws IOException {
            COSBase object = value instanceof COSObject reference ? reference.getObject() : value;
            Integer known = object == null ? null : fixed.get(object);
            if (object == null) {
                Piece.ascii(out, " null");
            } else if (known != null) {
                Piece.ascii(out, " " + known + " 0 R");
            } else if (numbers.containsKey(object) || isApart(object, value instanceof COSObject)) {
                refuseLeftOut(object);
                out.write(' ');
                gap(reserve(object));
            } else {
                whole(object);
            }
        }

        private static boolean isApart(COSBase object, boolean referred) {
            boolean compound = object instanceof COSDictionary || object instanceof COSArray;
            return object instanceof COSStream || (referred && compound);
        }

        /** Pages and tags are reserved before the rest; one that was not is of a page that was left out. */
        private void refuseLeftOut(COSBase object) {
            if (!numbers.containsKey(object) && object instanceof COSDictionary dictionary) {
                COSName type = dictionary.getCOSName(COSName.TYPE);
                if (COSName.PAGE.equals(type) || COSName.PAGES.equals(type) || COSName.STRUCT_ELEM.equals(type)) {
                    throw new IllegalStateException("something still leads to a left-out " + type.getName());
                }
            }
        }

        private void gap(int target) {
            gaps.add(out.size());
            targets.add(target);
        }

        private void whole(COSBase object) throws IOException {
            if (object instanceof COSDictionary dictionary) {
                entries(dictionary, false);
                Piece.ascii(out, ">>");
            } else if (object instanceof COSArray array) {
                out.write('[');
                for (COSBase item : array) {
                    value(item);
                }
                out.write(']');
            } else {
                out.write(' ');
                simple(out, object);
            }
        }

        private void entries(COSDictionary dictionary, boolean stream) throws IOException {
            Piece.ascii(out, "<<");
            for (COSName key : dictionary.keySet()) {
                if (stream && key.equals(COSName.LENGTH)) {
                    continue;
                }
                key.writePDF(out);
                if (key.equals(COSName.STRUCT_PARENTS) || key.equals(COSName.STRUCT_PARENT)) {
                    out.write(' ');
                    gap(~dictionary.getInt(key));
                } else {
                    value(dictionary.getItem(key));
                }
            }
        }
    }
}
