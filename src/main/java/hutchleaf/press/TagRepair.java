package hutchleaf.press;

import java.util.Optional;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;

/** Mends what the engine's tags leave out: the scope of header cells, and empty table feet. */
final class TagRepair {
    private static final COSName KIDS = COSName.K;
    private static final COSName SCOPE = COSName.getPDFName("Scope");

    private TagRepair() {}

    static void apply(PDDocumentCatalog catalog) {
        Optional.ofNullable(catalog.getStructureTreeRoot())
                .ifPresent(root -> walk(root.getCOSObject(), TagRepair::mend));
    }

    private static void mend(COSDictionary element) {
        if (COSName.getPDFName("TH").equals(element.getDictionaryObject(COSName.S))) {
            COSDictionary attributes = new COSDictionary();
            attributes.setItem(COSName.O, COSName.getPDFName("Table"));
            attributes.setItem(SCOPE, COSName.getPDFName("Column"));
            element.setItem(COSName.A, attributes);
        }
        if (element.getDictionaryObject(KIDS) instanceof COSArray kids) {
            for (int index = kids.size() - 1; index >= 0; index--) {
                if (isEmptyFoot(kids.getObject(index))) {
                    kids.remove(index);
                }
            }
        }
    }

    private static boolean isEmptyFoot(COSBase kid) {
        return kid instanceof COSDictionary element
                && COSName.getPDFName("TFoot").equals(element.getDictionaryObject(COSName.S))
                && (!(element.getDictionaryObject(KIDS) instanceof COSArray kids) || kids.size() == 0);
    }

    private static void walk(COSBase node, Consumer<COSDictionary> visit) {
        COSBase plain = node instanceof COSObject reference ? reference.getObject() : node;
        if (plain instanceof COSArray kids) {
            for (int index = 0; index < kids.size(); index++) {
                walk(kids.get(index), visit);
            }
        } else if (plain instanceof COSDictionary element && element.containsKey(KIDS)) {
            visit.accept(element);
            walk(element.getItem(KIDS), visit);
        }
    }
}
