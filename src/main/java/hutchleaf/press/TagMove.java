package hutchleaf.press;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jspecify.annotations.Nullable;

/**
 * Leads the tags of pages to the forms that took over their content: each marked-content number becomes a reference to a
 * number in a stream on a page (ISO 32000-1, 14.7.4.2). The tree itself stays as it is.
 */
final class TagMove {
    /** Where a page's content went. */
    record Target(PDPage page, PDFormXObject form) {}

    private final Map<COSDictionary, Target> targets = new HashMap<>();

    private TagMove(Map<PDPage, Target> pages) {
        pages.forEach((page, target) -> targets.put(page.getCOSObject(), target));
    }

    static void move(PDDocument pdf, Map<PDPage, Target> pages) {
        var root = pdf.getDocumentCatalog().getStructureTreeRoot();
        if (root != null) {
            new TagMove(pages).kids(root.getCOSObject(), null);
        }
    }

    /** A tag and all below it; the page is that of the nearest tag that names one. */
    private void kids(COSDictionary tag, @Nullable COSDictionary above) {
        COSDictionary named = tag.getCOSDictionary(COSName.PG);
        COSDictionary page = named == null ? above : named;
        COSBase kids = tag.getDictionaryObject(COSName.K);
        if (kids instanceof COSArray several) {
            for (int i = 0; i < several.size(); i++) {
                COSBase kid = several.get(i);
                COSBase moved = kid(kid, page);
                if (moved != kid) {
                    several.set(i, moved);
                }
            }
        } else if (kids != null) {
            COSBase moved = kid(kids, page);
            if (moved != kids) {
                tag.setItem(COSName.K, moved);
            }
        }
        Target target = named == null ? null : targets.get(named);
        if (target != null) {
            tag.setItem(COSName.PG, target.page());
        }
    }

    /** What stands for a kid: itself, or a reference in place of a bare number. */
    private COSBase kid(COSBase kid, @Nullable COSDictionary page) {
        COSBase found = kid instanceof COSObject reference ? reference.getObject() : kid;
        if (found instanceof COSInteger number && page != null) {
            COSDictionary reference = new COSDictionary();
            reference.setItem(COSName.TYPE, COSName.getPDFName("MCR"));
            reference.setInt(COSName.MCID, number.intValue());
            lead(reference, page);
            return reference;
        }
        if (found instanceof COSDictionary inner) {
            if (COSName.getPDFName("MCR").equals(inner.getCOSName(COSName.TYPE))) {
                COSDictionary own = inner.getCOSDictionary(COSName.PG);
                COSDictionary where = own == null ? page : own;
                if (where != null) {
                    lead(inner, where);
                }
            } else {
                kids(inner, page);
            }
        }
        return kid;
    }

    private void lead(COSDictionary reference, COSDictionary page) {
        Target target = targets.get(page);
        if (target == null) {
            throw new IllegalStateException("a tag leads to a page that stands on no sheet");
        }
        reference.setItem(COSName.PG, target.page());
        reference.setItem(COSName.getPDFName("Stm"), target.form());
    }
}
