package hutchleaf.press;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.util.XRLog;
import hutchleaf.page.Manuscript;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/**
 * The door of this stage: XHTML in, a finished tagged PDF (PDF/UA-1) out. Fonts and drawings are read once and kept, so
 * one press prints many documents; it belongs to one thread.
 */
public final class Press {
    private final Typefaces typefaces = new Typefaces();
    private final Figures figures;
    private final Drawings drawings;

    static {
        XRLog.setLoggingEnabled(false);
    }

    public Press(Figures figures) {
        this.figures = figures;
        this.drawings = new Drawings(figures);
    }

    /** Prints a document; empty when it cannot be printed as it stands, with the problems that say why. */
    public Optional<Printed> print(Manuscript manuscript, Problems problems) {
        Problems own = new Problems();
        Optional<Document> read = XhtmlReader.read(manuscript, own);
        Place fallback = Place.whole(manuscript.madeBy());
        read.ifPresent(document -> {
            LockCheck.check(document, fallback, own);
            GlyphCheck.check(document, typefaces, fallback, own);
            FigureCheck.check(document, figures, fallback, own);
        });
        Optional<Printed> printed =
                read.filter(document -> !own.hasErrors()).flatMap(document -> layOut(document, manuscript, own));
        problems.addAll(own);
        return printed;
    }

    /** Lays the document out until every part fits its place and starts on its side, then writes it. */
    private Optional<Printed> layOut(Document document, Manuscript manuscript, Problems problems) {
        Fitting fitting = new Fitting(document);
        Starts starts = new Starts(document);
        Place fallback = Place.whole(manuscript.madeBy());
        while (true) {
            try (PdfBoxRenderer renderer = Engine.layOut(document, typefaces, drawings)) {
                Layout layout = Layout.of(renderer);
                if (fitting.tighten(layout, fallback, problems) || starts.turn(layout)) {
                    continue;
                }
                return problems.hasErrors() ? Optional.empty() : Optional.of(write(renderer, layout, manuscript));
            }
        }
    }

    private Printed write(PdfBoxRenderer renderer, Layout layout, Manuscript manuscript) {
        try {
            Map<String, Integer> pages = layout.pages();
            renderer.createPDFWithoutClosing();
            PDDocument pdf = renderer.getPdfDocument();
            Finish.apply(pdf, manuscript);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 18);
            pdf.save(bytes);
            return new Printed(bytes.toByteArray(), pdf.getNumberOfPages(), pages);
        } catch (IOException e) {
            throw new UncheckedIOException("could not write " + manuscript.title(), e);
        }
    }
}
