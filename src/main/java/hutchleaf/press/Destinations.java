package hutchleaf.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDNamedDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.jspecify.annotations.Nullable;

/**
 * Where the links and bookmarks of a file lead. A destination with a name is put in the name's place, so that the same
 * name in two parts leads to two places.
 */
final class Destinations {
    private static final COSName SE = COSName.getPDFName("SE");

    private final PDDocumentCatalog catalog;

    Destinations(PDDocumentCatalog catalog) {
        this.catalog = catalog;
    }

    /**
     * Points a link straight at its place, and gives the page it leads to; empty when it leads out of the file.
     *
     * @param holder a link's annotation, or a bookmark
     */
    Optional<COSDictionary> page(COSDictionary holder) {
        return settled(holder).map(place -> (COSDictionary) place.getObject(0));
    }

    private Optional<COSArray> settled(COSDictionary holder) {
        COSBase own = holder.getDictionaryObject(COSName.DEST);
        COSDictionary action = holder.getCOSDictionary(COSName.A);
        if (own != null) {
            return settle(holder, COSName.DEST, own);
        }
        if (action != null && COSName.getPDFName("GoTo").equals(action.getCOSName(COSName.S))) {
            return settle(action, COSName.D, action.getDictionaryObject(COSName.D));
        }
        return Optional.empty();
    }

    private Optional<COSArray> settle(COSDictionary dictionary, COSName key, @Nullable COSBase to) {
        COSBase place = to instanceof COSName || to instanceof COSString ? named(to) : to;
        if (!(place instanceof COSArray array) || !(array.getObject(0) instanceof COSDictionary)) {
            throw new IllegalStateException("a link or bookmark leads to no page: " + to);
        }
        dictionary.setItem(key, array);
        return Optional.of(array);
    }

    private @Nullable COSBase named(COSBase name) {
        try {
            PDNamedDestination asked = name instanceof COSString string
                    ? new PDNamedDestination(string)
                    : new PDNamedDestination((COSName) name);
            PDPageDestination found = catalog.findNamedDestinationPage(asked);
            return found == null ? null : found.getCOSObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file's outline, as far as it leads to these pages; a line above such a line stays and leads where that leads. */
    List<Bookmark> bookmarks(Pieces pieces) {
        COSDictionary outline = catalog.getCOSObject().getCOSDictionary(COSName.OUTLINES);
        return outline == null ? List.of() : below(outline, pieces);
    }

    private List<Bookmark> below(COSDictionary parent, Pieces pieces) {
        List<Bookmark> bookmarks = new ArrayList<>();
        COSDictionary item = parent.getCOSDictionary(COSName.FIRST);
        while (item != null) {
            bookmark(item, pieces).ifPresent(bookmarks::add);
            item = item.getCOSDictionary(COSName.NEXT);
        }
        return bookmarks;
    }

    private Optional<Bookmark> bookmark(COSDictionary item, Pieces pieces) {
        String title = item.getString(COSName.TITLE, "");
        boolean open = item.getInt(COSName.COUNT, 0) > 0;
        List<Bookmark> below = below(item, pieces);
        COSArray place =
                settled(item).orElseThrow(() -> new IllegalStateException("bookmark without a page: " + title));
        Integer page = pieces.number(place.getObject(0));
        if (page != null) {
            return Optional.of(new Bookmark(title, open, page, view(place), tag(item, pieces), below));
        }
        return below.stream()
                .findFirst()
                .map(next -> new Bookmark(title, open, next.page(), next.view(), next.tag(), below));
    }

    private static OptionalInt tag(COSDictionary item, Pieces pieces) {
        COSDictionary tag = item.getCOSDictionary(SE);
        Integer number = tag == null ? null : pieces.number(tag);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    private static String view(COSArray place) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            for (int i = 1; i < place.size(); i++) {
                out.write(' ');
                Pieces.simple(out, place.getObject(i));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.US_ASCII);
    }
}
