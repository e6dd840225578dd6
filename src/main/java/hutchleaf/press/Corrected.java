package hutchleaf.press;

import hutchleaf.sheet.CardMaking.Axis;
import hutchleaf.sheet.Correction;
import hutchleaf.sheet.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * A finished document whose pages are changed so that one printer's faults bring them back to what they should be. A matrix
 * goes before each page's content (ISO 32000-1, 8.3.4); tags and their numbers stay as they are.
 */
public final class Corrected {
    private static final COSName QUAD_POINTS = COSName.getPDFName("QuadPoints");

    private Corrected() {}

    /**
     * The corrected document; the same where nothing changes.
     *
     * @param pages held sideways
     * @param turnedOn the line on which a printer turns every second page, the back; empty where all are fronts
     */
    public static Printed of(Printed pages, Correction correction, Optional<Axis> turnedOn) {
        if (correction.changesNothing()) {
            return pages;
        }
        try (InputStream from = pages.open()) {
            byte[] source = from.readAllBytes();
            try (PDDocument pdf = Loader.loadPDF(source)) {
                for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                    correct(pdf, pdf.getPage(page), correction, page % 2 == 1 ? turnedOn : Optional.empty());
                }
                String title = pdf.getDocumentInformation().getTitle();
                String language = pdf.getDocumentCatalog().getLanguage();
                Finish.name(pdf, title, language, madeFrom(source, correction + " " + turnedOn));
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                pdf.save(out);
                return new Printed(out.toByteArray(), pages.pages(), pages.pageOf());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The first page, from 1, that has ink nearer to an edge of the sheet than this. */
    public static OptionalInt nearTheEdge(Printed pages, Length edge) {
        try (InputStream from = pages.open();
                PDDocument pdf = Loader.loadPDF(from.readAllBytes())) {
            return EdgeInk.firstPage(pdf, edge);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] madeFrom(byte[] source, String how) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(source);
        all.writeBytes(how.getBytes(StandardCharsets.UTF_8));
        return all.toByteArray();
    }

    private static void correct(PDDocument pdf, PDPage page, Correction correction, Optional<Axis> turnedOn)
            throws IOException {
        PDRectangle media = page.getMediaBox();
        Length width = new Length(media.getWidth());
        Length height = new Length(media.getHeight());
        AffineTransform drawn = turnedOn.map(axis -> correction.back(width, height, axis))
                .orElseGet(() -> correction.front(width, height));
        AffineTransform upward = upward(drawn, media);
        content(pdf, page, upward);
        for (PDAnnotation annotation : page.getAnnotations()) {
            annotation.setRectangle(moved(annotation.getRectangle(), upward));
            quads(annotation, upward);
        }
        if (!page.getTrimBox().equals(media) && !same(page.getTrimBox(), media)) {
            page.setTrimBox(moved(page.getTrimBox(), upward));
        }
    }

    /** The same from the lower left corner of a page, y upward. */
    private static AffineTransform upward(AffineTransform drawn, PDRectangle media) {
        AffineTransform down = new AffineTransform(1, 0, 0, -1, -media.getLowerLeftX(), media.getUpperRightY());
        AffineTransform up = new AffineTransform(1, 0, 0, -1, media.getLowerLeftX(), media.getUpperRightY());
        up.concatenate(drawn);
        up.concatenate(down);
        return up;
    }

    private static void content(PDDocument pdf, PDPage page, AffineTransform moved) throws IOException {
        PDStream stream = new PDStream(pdf);
        try (var out = stream.createOutputStream(COSName.FLATE_DECODE);
                InputStream old = page.getContents()) {
            out.write(String.format(
                            Locale.ROOT,
                            "q %.8f 0 0 %.8f %.5f %.5f cm\n",
                            moved.getScaleX(),
                            moved.getScaleY(),
                            moved.getTranslateX(),
                            moved.getTranslateY())
                    .getBytes(StandardCharsets.US_ASCII));
            old.transferTo(out);
            out.write("\nQ\n".getBytes(StandardCharsets.US_ASCII));
        }
        page.setContents(stream);
    }

    private static PDRectangle moved(PDRectangle box, AffineTransform moved) {
        Rectangle2D to = moved.createTransformedShape(new Rectangle2D.Double(
                        box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight()))
                .getBounds2D();
        return new PDRectangle((float) to.getX(), (float) to.getY(), (float) to.getWidth(), (float) to.getHeight());
    }

    private static void quads(PDAnnotation annotation, AffineTransform moved) {
        COSArray corners = annotation.getCOSObject().getCOSArray(QUAD_POINTS);
        for (int i = 0; corners != null && i + 1 < corners.size(); i += 2) {
            Point2D corner =
                    moved.transform(new Point2D.Float(number(corners, i), number(corners, i + 1)), new Point2D.Float());
            corners.set(i, new COSFloat((float) corner.getX()));
            corners.set(i + 1, new COSFloat((float) corner.getY()));
        }
    }

    private static float number(COSArray numbers, int at) {
        return ((COSNumber) numbers.getObject(at)).floatValue();
    }

    private static boolean same(PDRectangle one, PDRectangle other) {
        return one.getCOSArray().toString().equals(other.getCOSArray().toString());
    }
}
