package hutchleaf.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Reads back where the links and bookmarks of a PDF lead. */
public final class PdfLinks {
    private PdfLinks() {}

    /** {@code 1>3} for each link on page 1 that leads to page 3, in the file's order. */
    public static List<String> of(byte[] file) {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            List<String> links = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    links.add(1 + pdf.getPages().indexOf(page) + ">" + target((PDAnnotationLink) annotation, pdf));
                }
            }
            return links;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int target(PDAnnotationLink link, PDDocument pdf) throws IOException {
        var destination = link.getAction() instanceof PDActionGoTo go ? go.getDestination() : link.getDestination();
        return 1 + pdf.getPages().indexOf(((PDPageDestination) destination).getPage());
    }

    /** {@code Ears 1} for a bookmark to page 1, with a dash before it for each level above. */
    public static List<String> bookmarks(byte[] file) {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            List<String> lines = new ArrayList<>();
            if (pdf.getDocumentCatalog().getDocumentOutline() != null) {
                bookmarks(pdf.getDocumentCatalog().getDocumentOutline(), "", pdf, lines);
            }
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void bookmarks(PDOutlineNode above, String dashes, PDDocument pdf, List<String> lines)
            throws IOException {
        PDOutlineItem before = null;
        for (PDOutlineItem item : above.children()) {
            lines.add(dashes + item.getTitle() + " " + (1 + pdf.getPages().indexOf(item.findDestinationPage(pdf))));
            if (before != null && !before.equals(item.getPreviousSibling())) {
                lines.add("the one before '" + item.getTitle() + "' is another");
            }
            bookmarks(item, dashes + "-", pdf, lines);
            before = item;
        }
    }
}
