package hutchleaf.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Takes a finished PDF apart. It knows what the press makes, and refuses what it does not know rather than lose it. */
final class PartReader {
    private static final Set<String> KNOWN = Set.of(
            "Lang",
            "MarkInfo",
            "Metadata",
            "Names",
            "Dests",
            "Outlines",
            "Pages",
            "StructTreeRoot",
            "Type",
            "Version",
            "ViewerPreferences");

    private static final Set<String> KNOWN_TAG_ROOT = Set.of("K", "ParentTree", "ParentTreeNextKey", "RoleMap", "Type");

    private final PDDocument pdf;
    private final Pieces pieces = new Pieces();
    private final Set<COSDictionary> pages = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<COSDictionary> pagesInOrder = new ArrayList<>();
    private final List<Integer> numbers = new ArrayList<>();
    private final List<COSBase> owners = new ArrayList<>();

    private PartReader(PDDocument pdf, IntPredicate kept) {
        this.pdf = pdf;
        int number = 0;
        for (PDPage page : pdf.getPages()) {
            number++;
            if (kept.test(number)) {
                pages.add(page.getCOSObject());
                pagesInOrder.add(page.getCOSObject());
                numbers.add(number);
            }
        }
    }

    /**
     * Reads a file, or some of its pages.
     *
     * @param kept asked for each page's 1-based number
     */
    static Part read(byte[] file, IntPredicate kept) {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            PartReader reader = new PartReader(pdf, kept);
            return reader.part(Digest.of(reader.numbers.toString().getBytes(StandardCharsets.US_ASCII), file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Part part(byte[] digest) throws IOException {
        COSDictionary catalog = pdf.getDocumentCatalog().getCOSObject();
        refuseUnknown(catalog, KNOWN);
        COSDictionary tagRoot = catalog.getCOSDictionary(COSName.STRUCT_TREE_ROOT);
        if (tagRoot == null) {
            throw new IllegalStateException("a part has no tags");
        }
        refuseUnknown(tagRoot, KNOWN_TAG_ROOT);
        Destinations destinations = new Destinations(pdf.getDocumentCatalog());
        List<COSDictionary> links = links(destinations);
        TagCut cut = tags(tagRoot, links);
        keys(cut, links);
        List<Integer> ownerNumbers = owners.stream().map(pieces::reserve).toList();
        List<Piece> written = pieces.write();
        Part.Contents contents = new Part.Contents(
                pdf.getDocumentInformation().getTitle(),
                pdf.getDocumentCatalog().getLanguage(),
                pagesInOrder.size(),
                ownerNumbers,
                roles(tagRoot),
                destinations.bookmarks(pieces),
                faces());
        return new Part(written, contents, digest);
    }

    private static void refuseUnknown(COSDictionary dictionary, Set<String> known) {
        Set<String> unknown = new TreeSet<>();
        dictionary.keySet().forEach(key -> unknown.add(key.getName()));
        unknown.removeAll(known);
        if (!unknown.isEmpty()) {
            throw new IllegalStateException("no part of ours has a " + unknown + " to bind");
        }
    }

    /** The annotations that stay: links to pages that stay, and out of the file. The others leave their page. */
    private List<COSDictionary> links(Destinations destinations) {
        List<COSDictionary> links = new ArrayList<>();
        for (COSDictionary page : pagesInOrder) {
            COSArray all = page.getCOSArray(COSName.ANNOTS);
            COSArray left = new COSArray();
            for (int i = 0; all != null && i < all.size(); i++) {
                COSDictionary link = (COSDictionary) all.getObject(i);
                if (destinations.page(link).map(pages::contains).orElse(true)) {
                    left.add(all.get(i));
                    links.add(link);
                }
            }
            if (left.size() == 0) {
                page.removeItem(COSName.ANNOTS);
            } else {
                page.setItem(COSName.ANNOTS, left);
            }
        }
        return links;
    }

    /** Puts all tags below one, the first piece, which the binder calls a part of its document. */
    private TagCut tags(COSDictionary tagRoot, List<COSDictionary> links) {
        COSDictionary top = new COSDictionary();
        List<COSBase> kids = TagMend.kids(tagRoot);
        if (kids.size() == 1 && kids.get(0) instanceof COSDictionary only) {
            top = only;
        } else {
            top.setItem(COSName.TYPE, COSName.STRUCT_ELEM);
            top.setItem(COSName.K, new COSArray(kids));
        }
        Set<COSDictionary> linkSet = Collections.newSetFromMap(new IdentityHashMap<>());
        linkSet.addAll(links);
        TagCut cut = new TagCut(top, pages, linkSet);
        Headings.level(cut.tags());
        top.setItem(COSName.S, COSName.getPDFName("Part"));
        COSDictionary document = new COSDictionary();
        top.setItem(COSName.P, document);
        pieces.fix(document, Binder.DOCUMENT);
        // The order that Part.TAGS and Part.PAGES tell.
        pieces.reserve(top);
        pieces.reserve(pagesNode());
        pagesInOrder.forEach(pieces::reserve);
        cut.tags().forEach(pieces::reserve);
        return cut;
    }

    private COSDictionary pagesNode() {
        COSDictionary node = new COSDictionary();
        COSDictionary above = new COSDictionary();
        pieces.fix(above, Binder.PAGES);
        node.setItem(COSName.TYPE, COSName.PAGES);
        node.setItem(COSName.PARENT, above);
        node.setInt(COSName.COUNT, pagesInOrder.size());
        node.setItem(COSName.KIDS, new COSArray(List.copyOf(pagesInOrder)));
        pagesInOrder.forEach(page -> page.setItem(COSName.PARENT, node));
        return node;
    }

    /** Counts the keys of the parent tree anew: pages first, then links. */
    private void keys(TagCut cut, List<COSDictionary> links) {
        for (COSDictionary page : pagesInOrder) {
            page.setInt(COSName.STRUCT_PARENTS, owners.size());
            owners.add(cut.owners(page));
        }
        for (COSDictionary link : links) {
            COSDictionary owner = cut.owner(link);
            if (owner == null) {
                throw new IllegalStateException("a link has no tag");
            }
            link.setInt(COSName.STRUCT_PARENT, owners.size());
            owners.add(owner);
        }
    }

    private static Map<String, String> roles(COSDictionary tagRoot) {
        Map<String, String> roles = new TreeMap<>();
        COSDictionary map = tagRoot.getCOSDictionary(COSName.ROLE_MAP);
        if (map != null) {
            map.keySet().forEach(key -> roles.put(key.getName(), map.getNameAsString(key, "")));
        }
        return roles;
    }

    private List<Face> faces() throws IOException {
        List<Face> faces = new ArrayList<>();
        for (Map.Entry<Integer, COSDictionary> font : pieces.fonts().entrySet()) {
            Face.read(font.getKey(), font.getValue()).ifPresent(faces::add);
        }
        return faces;
    }
}
