package hutchleaf.press;

import hutchleaf.sheet.Booklet;
import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.Length;
import hutchleaf.sheet.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * Puts the half-sheet pages of a finished document on landscape sheets, in the order of a booklet. Each page stands on its
 * sheet as a form of its own; its tags go with it, in the order of the pages, so that the sheets are read as the booklet is.
 */
public final class Imposition {
    private final PDDocument pdf;
    private final Paper paper;
    private final Grammage weight;
    private final List<PDFormXObject> forms = new ArrayList<>();
    private final Map<Integer, PDPage> sheetOf = new HashMap<>();

    private Imposition(PDDocument pdf, Paper paper, Grammage weight) {
        this.pdf = pdf;
        this.paper = paper;
        this.weight = weight;
    }

    /**
     * The sheets, PDF/UA-1 as the pages are.
     *
     * @param title of the sheets, and what a reader's window shows
     * @param language BCP 47 tag
     * @param pages half a sheet each, without links
     * @param paper of the sheets
     * @param weight from which the pages of inner sheets are moved towards the fold
     * @throws IllegalArgumentException when a page is wider or higher than half a sheet, or has a link
     */
    public static Printed of(
            String title, String language, Printed pages, Booklet booklet, Paper paper, Grammage weight) {
        try (var from = pages.open()) {
            byte[] source = from.readAllBytes();
            try (PDDocument pdf = Loader.loadPDF(source)) {
                new Imposition(pdf, paper, weight).impose(booklet);
                Finish.name(pdf, title, language, source);
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                pdf.save(out);
                return new Printed(out.toByteArray(), booklet.sides().size(), Map.of());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void impose(Booklet booklet) throws IOException {
        if (booklet.pages() != pdf.getNumberOfPages()) {
            throw new IllegalArgumentException(
                    "a booklet of " + booklet.pages() + " pages for a document of " + pdf.getNumberOfPages());
        }
        List<PDPage> pages = new ArrayList<>();
        pdf.getPages().forEach(pages::add);
        for (PDPage page : pages) {
            forms.add(form(page));
        }
        pages.forEach(pdf.getPages()::remove);
        for (Booklet.Side side : booklet.sides()) {
            pdf.addPage(sheet(side, booklet.creep(side.sheet(), weight)));
        }
        Map<PDPage, TagMove.Target> targets = new HashMap<>();
        for (int i = 0; i < pages.size(); i++) {
            PDPage sheet = Optional.ofNullable(sheetOf.get(i)).orElseThrow();
            targets.put(pages.get(i), new TagMove.Target(sheet, forms.get(i)));
        }
        TagMove.move(pdf, targets);
        pdf.getDocumentCatalog().setDocumentOutline(null);
    }

    /** A page's content as a form; it keeps the page's key to the tags (ISO 32000-1, 14.7.4.4). */
    private PDFormXObject form(PDPage page) throws IOException {
        PDRectangle box = page.getMediaBox();
        if (box.getWidth() > halfWidth() + Length.TOLERANCE.points()
                || box.getHeight() > paper.width().points() + Length.TOLERANCE.points()) {
            throw new IllegalArgumentException("a page of " + box + " on half a sheet of " + paper);
        }
        if (!page.getAnnotations().isEmpty()) {
            throw new IllegalArgumentException("a page with links cannot stand on a sheet");
        }
        PDStream content = new PDStream(pdf, page.getContents(), COSName.FLATE_DECODE);
        PDFormXObject form = new PDFormXObject(content);
        form.setBBox(box);
        form.setResources(page.getResources());
        if (page.getStructParents() >= 0) {
            form.setStructParents(page.getStructParents());
        }
        return form;
    }

    private double halfWidth() {
        return paper.height().points() / 2;
    }

    private PDPage sheet(Booklet.Side side, Length creep) throws IOException {
        PDPage sheet = new PDPage(new PDRectangle(
                (float) paper.height().points(), (float) paper.width().points()));
        Finish.boxes(sheet);
        sheet.setResources(new PDResources());
        StringBuilder drawing = new StringBuilder();
        double fold = halfWidth();
        // Both pages touch the fold; the paper that is left over by half a size lies at the outer edges.
        place(sheet, side.left(), width -> fold - width + creep.points(), drawing);
        place(sheet, side.right(), width -> fold - creep.points(), drawing);
        PDStream content = new PDStream(pdf);
        try (var out = content.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(drawing.toString().getBytes(StandardCharsets.US_ASCII));
        }
        sheet.setContents(content);
        return sheet;
    }

    /** Where the left edge of a page of a width lies. */
    private interface LeftEdge {
        double of(double width);
    }

    private void place(PDPage sheet, OptionalInt page, LeftEdge edge, StringBuilder drawing) {
        if (page.isEmpty()) {
            return;
        }
        int index = page.getAsInt() - 1;
        PDFormXObject form = forms.get(index);
        double x = edge.of(form.getBBox().getWidth());
        double y = (paper.width().points() - form.getBBox().getHeight()) / 2;
        COSName name = sheet.getResources().add(form);
        drawing.append(String.format(Locale.ROOT, "q 1 0 0 1 %.4f %.4f cm /%s Do Q\n", x, y, name.getName()));
        sheetOf.put(index, sheet);
    }
}
