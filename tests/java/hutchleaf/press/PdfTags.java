package hutchleaf.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Reads back the tags of a PDF, and whether the parent tree agrees with them, which veraPDF does not look at. */
public final class PdfTags {
    private static final COSName MCID = COSName.getPDFName("MCID");
    private static final COSName OBJ = COSName.getPDFName("Obj");
    private static final Set<String> CELLS = Set.of("TD", "TH");

    private final List<Tag> tags = new ArrayList<>();
    private final Map<COSBase, Integer> pages = new HashMap<>();
    private final Map<String, COSDictionary> marks = new HashMap<>();
    private final Map<COSDictionary, COSDictionary> links = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    private PdfTags() {}

    /**
     * One tag.
     *
     * @param path names of the tags from the top down to its own, with slashes
     * @param alt empty for none
     * @param scope of a header cell, empty for none
     * @param kids how many tags, numbered contents and links stand right below it
     */
    public record Tag(String path, String lang, String alt, String scope, int kids) {
        public String name() {
            return path.substring(path.lastIndexOf('/') + 1);
        }
    }

    /** Every tag, in reading order. */
    public static List<Tag> of(byte[] pdf) {
        return read(pdf).tags;
    }

    /** What is wrong, one line each: empty tags other than cells, and entries of the parent tree that lie. */
    public static List<String> faults(byte[] pdf) {
        return read(pdf).faults;
    }

    private static PdfTags read(byte[] file) {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            PdfTags tags = new PdfTags();
            int number = 0;
            for (PDPage page : pdf.getPages()) {
                tags.pages.put(page.getCOSObject(), ++number);
            }
            COSDictionary root = pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
            tags.walk(root, "");
            tags.checkParents(root.getCOSDictionary(COSName.PARENT_TREE).getCOSArray(COSName.NUMS), pdf);
            return tags;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void walk(COSDictionary tag, String above) {
        List<COSBase> kids = TagMend.kids(tag);
        String path = above;
        if (tag.containsKey(COSName.S)) {
            path = above + "/" + tag.getNameAsString(COSName.S);
            COSDictionary attributes = tag.getCOSDictionary(COSName.A);
            String scope = attributes == null ? "" : attributes.getNameAsString("Scope", "");
            tags.add(
                    new Tag(path, tag.getString(COSName.LANG, ""), tag.getString(COSName.ALT, ""), scope, kids.size()));
            if (kids.isEmpty() && !CELLS.contains(tag.getNameAsString(COSName.S))) {
                faults.add("empty tag " + path);
            }
        }
        for (COSBase kid : kids) {
            kid(kid, tag, path);
        }
    }

    private void kid(COSBase kid, COSDictionary tag, String path) {
        COSDictionary page = tag.getCOSDictionary(COSName.PG);
        if (kid instanceof COSInteger number) {
            mark(page, number.intValue(), tag, path);
        } else if (kid instanceof COSDictionary dictionary && dictionary.containsKey(MCID)) {
            COSDictionary own = dictionary.getCOSDictionary(COSName.PG);
            mark(own == null ? page : own, dictionary.getInt(MCID), tag, path);
        } else if (kid instanceof COSDictionary dictionary && dictionary.containsKey(OBJ)) {
            links.put(dictionary.getCOSDictionary(OBJ), tag);
        } else if (kid instanceof COSDictionary child) {
            if (child.getCOSDictionary(COSName.P) != tag) {
                faults.add("wrong parent of a tag below " + path);
            }
            walk(child, path);
        }
    }

    private void mark(COSDictionary page, int number, COSDictionary tag, String path) {
        if (!pages.containsKey(page)) {
            faults.add("content on a page that is not there: " + path);
        }
        marks.put(pages.get(page) + " " + number, tag);
    }

    private void checkParents(COSArray numbers, PDDocument pdf) throws IOException {
        Map<Integer, COSBase> owners = new HashMap<>();
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            owners.put(numbers.getInt(i), numbers.getObject(i + 1));
        }
        int found = 0;
        for (PDPage page : pdf.getPages()) {
            COSArray tagsOfPage = (COSArray) java.util.Objects.requireNonNull(owners.get(page.getStructParents()));
            for (int i = 0; i < tagsOfPage.size(); i++) {
                COSDictionary tag = marks.get(pages.get(page.getCOSObject()) + " " + i);
                found += tag == null ? 0 : 1;
                if (tagsOfPage.getObject(i) != tag) {
                    faults.add("page " + pages.get(page.getCOSObject()) + ", content " + i + " has another owner");
                }
            }
            for (var link : page.getAnnotations()) {
                COSDictionary owner = links.get(link.getCOSObject());
                if (owner == null || owners.get(link.getStructParent()) != owner) {
                    faults.add("a link of page " + pages.get(page.getCOSObject()) + " has another owner");
                }
            }
        }
        if (found != marks.size()) {
            faults.add("the parent tree knows " + found + " contents of " + marks.size());
        }
    }
}
