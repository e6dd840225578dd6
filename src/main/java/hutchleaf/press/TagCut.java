package hutchleaf.press;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/**
 * Leaves in a tag tree what has content on some pages, in place, and notes which tag owns what. Tags without content
 * go; the cells of a table row stay together, and a table with a cell of several rows keeps all its rows, so that rows
 * stay equally long.
 */
final class TagCut {
    private static final COSName TABLE = COSName.getPDFName("Table");
    private static final COSName ROW = COSName.getPDFName("TR");
    private static final COSName LINK = COSName.getPDFName("Link");
    private static final COSName SPAN = COSName.getPDFName("Span");
    private static final COSName MCID = COSName.getPDFName("MCID");
    private static final COSName OBJ = COSName.getPDFName("Obj");
    private static final Set<String> CELLS = Set.of("TD", "TH");
    private static final Set<String> ROWS = Set.of("THead", "TBody", "TFoot", "TR");

    private final Set<COSDictionary> pages;
    private final Set<COSDictionary> links;
    private final IdentityHashMap<COSDictionary, Boolean> alive = new IdentityHashMap<>();
    private final List<COSDictionary> tags = new ArrayList<>();
    private final IdentityHashMap<COSDictionary, Map<Integer, COSDictionary>> owners = new IdentityHashMap<>();
    private final IdentityHashMap<COSDictionary, COSDictionary> linkOwners = new IdentityHashMap<>();

    /**
     * Cuts the tree below its topmost tag.
     *
     * @param pages those that stay, by identity
     * @param links the annotations that stay, by identity
     */
    TagCut(COSDictionary top, Set<COSDictionary> pages, Set<COSDictionary> links) {
        this.pages = pages;
        this.links = links;
        isAlive(top);
        cut(top, false);
    }

    /** The tags that are left, parents first. */
    List<COSDictionary> tags() {
        return tags;
    }

    /** The owner of each numbered content of a page; null where a number has none. */
    COSArray owners(COSDictionary page) {
        COSArray list = new COSArray();
        owners.getOrDefault(page, Map.of()).forEach((number, tag) -> {
            list.growToSize(number + 1);
            list.set(number, tag);
        });
        return list;
    }

    /** The tag that owns an annotation; null when none does. */
    @Nullable
    COSDictionary owner(COSDictionary link) {
        return linkOwners.get(link);
    }

    private boolean isAlive(COSDictionary tag) {
        boolean any = false;
        List<COSBase> kids = TagMend.kids(tag);
        for (COSBase kid : kids) {
            any |= isTag(kid) ? isAlive((COSDictionary) kid) : stays(kid, tag);
        }
        // A row to write in is a row all the same.
        any |= ROW.equals(tag.getCOSName(COSName.S)) && !hasContent(tag) && isRowOfPages(kids);
        alive.put(tag, any);
        return any;
    }

    private boolean stays(COSBase kid, COSDictionary tag) {
        if (kid instanceof COSDictionary reference && reference.containsKey(OBJ)) {
            return links.contains(reference.getCOSDictionary(OBJ));
        }
        return pages.contains(page(kid, tag));
    }

    private static boolean hasContent(COSDictionary tag) {
        return TagMend.kids(tag).stream().anyMatch(kid -> !isTag(kid) || hasContent((COSDictionary) kid));
    }

    private boolean isRowOfPages(List<COSBase> cells) {
        return cells.stream().anyMatch(cell -> pages.contains(((COSDictionary) cell).getCOSDictionary(COSName.PG)));
    }

    private void cut(COSDictionary tag, boolean allRows) {
        tags.add(tag);
        boolean rows = allRows || (TABLE.equals(tag.getCOSName(COSName.S)) && hasTallCell(tag));
        COSArray left = new COSArray();
        boolean linked = false;
        boolean numbered = false;
        for (COSBase kid : TagMend.kids(tag)) {
            if (isTag(kid)) {
                COSDictionary child = (COSDictionary) kid;
                if (Boolean.TRUE.equals(alive.get(child)) || is(child, CELLS) || (rows && is(child, ROWS))) {
                    child.setItem(COSName.P, tag);
                    left.add(child);
                    cut(child, rows && is(child, ROWS));
                }
            } else if (stays(kid, tag)) {
                linked |= note(kid, tag);
                numbered |= kid instanceof COSInteger;
                left.add(kid instanceof COSDictionary reference ? placed(reference, tag) : kid);
            }
        }
        if (left.size() == 0) {
            tag.removeItem(COSName.K);
        } else {
            tag.setItem(COSName.K, left);
        }
        if (!numbered) {
            // Only plain numbers need it; it may be a page that is left out.
            tag.removeItem(COSName.PG);
        }
        if (LINK.equals(tag.getCOSName(COSName.S)) && !linked) {
            // Its page is left out, so it leads nowhere.
            tag.setItem(COSName.S, SPAN);
        }
    }

    /** Notes who owns it; true when it is an annotation. */
    private boolean note(COSBase kid, COSDictionary tag) {
        if (kid instanceof COSDictionary reference && reference.containsKey(OBJ)) {
            linkOwners.put(reference.getCOSDictionary(OBJ), tag);
            return true;
        }
        int number = kid instanceof COSInteger mark ? mark.intValue() : ((COSDictionary) kid).getInt(MCID);
        owners.computeIfAbsent(page(kid, tag), page -> new TreeMap<>()).put(number, tag);
        return false;
    }

    /** The reference with its page said, so that it does not hang on the tag's. */
    private static COSDictionary placed(COSDictionary reference, COSDictionary tag) {
        reference.setItem(COSName.PG, page(reference, tag));
        return reference;
    }

    private static COSDictionary page(COSBase kid, COSDictionary tag) {
        COSDictionary own = kid instanceof COSDictionary reference ? reference.getCOSDictionary(COSName.PG) : null;
        COSDictionary page = own != null ? own : tag.getCOSDictionary(COSName.PG);
        if (page == null) {
            throw new IllegalStateException("a tag's content has no page");
        }
        return page;
    }

    private static boolean hasTallCell(COSDictionary tag) {
        COSDictionary attributes = tag.getDictionaryObject(COSName.A) instanceof COSDictionary own ? own : null;
        return (attributes != null && attributes.getInt("RowSpan", 1) > 1)
                || TagMend.kids(tag).stream().anyMatch(kid -> isTag(kid) && hasTallCell((COSDictionary) kid));
    }

    private static boolean isTag(COSBase kid) {
        return kid instanceof COSDictionary tag && tag.containsKey(COSName.S);
    }

    private static boolean is(COSDictionary tag, Set<String> names) {
        return names.contains(tag.getNameAsString(COSName.S, ""));
    }
}
