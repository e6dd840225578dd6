package hutchleaf.press;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Mends the tag tree that the engine leaves: a caption moves into its table, tags of table parts without rows go, so do
 * empty alternate texts (they would silence what they stand for), and nameless figures become decoration.
 */
final class TagMend {
    private static final COSName FIGURE = COSName.getPDFName("Figure");
    private static final COSName TABLE = COSName.getPDFName("Table");
    private static final COSName CAPTION = COSName.getPDFName("Caption");
    private static final List<COSName> TABLE_PARTS =
            List.of(COSName.getPDFName("THead"), COSName.getPDFName("TBody"), COSName.getPDFName("TFoot"));

    private final List<COSDictionary> decorations = new ArrayList<>();

    private TagMend() {}

    /** Mends the tree in place and returns the figures taken out of it, whose content is still marked as theirs. */
    static List<COSDictionary> mend(PDDocument pdf) {
        TagMend mend = new TagMend();
        var root = pdf.getDocumentCatalog().getStructureTreeRoot();
        if (root != null) {
            mend.element(root.getCOSObject());
        }
        return mend.decorations;
    }

    private void element(COSDictionary element) {
        if (element.getDictionaryObject(COSName.ALT) instanceof COSString alt
                && alt.getString().isEmpty()) {
            element.removeItem(COSName.ALT);
        }
        List<COSBase> kids = new ArrayList<>();
        for (COSBase kid : kids(element)) {
            if (isNamelessFigure(kid)) {
                decorations.add((COSDictionary) kid);
            } else if (!isEmptyPart(kid)) {
                kids.add(kid);
                // References to content and links stand among the tags; they have no kids.
                if (kid instanceof COSDictionary child && child.containsKey(COSName.S)) {
                    element(child);
                }
            }
        }
        moveCaptions(kids);
        set(element, kids);
    }

    private static boolean isNamelessFigure(COSBase kid) {
        return kid instanceof COSDictionary figure
                && isTag(figure, FIGURE)
                && figure.getString(COSName.ALT, "").isBlank();
    }

    private static boolean isEmptyPart(COSBase kid) {
        return TABLE_PARTS.stream().anyMatch(part -> isTag(kid, part))
                && kids((COSDictionary) kid).isEmpty();
    }

    /** The engine lays a caption beside its table; ISO 32000-1 table 337 wants it inside, first or last. */
    private static void moveCaptions(List<COSBase> kids) {
        for (COSBase kid : List.copyOf(kids)) {
            if (isTag(kid, CAPTION)) {
                kids.stream().filter(other -> isTag(other, TABLE)).findFirst().ifPresent(other -> {
                    COSDictionary table = (COSDictionary) other;
                    List<COSBase> inside = kids(table);
                    inside.add(0, kid);
                    set(table, inside);
                    ((COSDictionary) kid).setItem(COSName.P, table);
                    kids.remove(kid);
                });
            }
        }
    }

    private static boolean isTag(COSBase kid, COSName tag) {
        return kid instanceof COSDictionary element && tag.equals(element.getCOSName(COSName.S));
    }

    /** What stands under an element: tags, numbers of marked content, references; one alone may stand without a list. */
    static List<COSBase> kids(COSDictionary element) {
        COSBase kids = element.getDictionaryObject(COSName.K);
        List<COSBase> list = new ArrayList<>();
        if (kids instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                list.add(array.getObject(i));
            }
        } else if (kids != null) {
            list.add(kids);
        }
        return list;
    }

    private static void set(COSDictionary element, List<COSBase> kids) {
        if (kids.isEmpty()) {
            element.removeItem(COSName.K);
        } else {
            element.setItem(COSName.K, new COSArray(kids));
        }
    }
}
