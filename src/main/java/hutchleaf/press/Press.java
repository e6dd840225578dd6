package hutchleaf.press;

import hutchleaf.page.Manuscript;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Turns XHTML into finished PDF/UA. It keeps its parsed fonts and figures from one document to the next and belongs to
 * one thread at a time: for several threads, make a press for each.
 *
 * <p>What a page may ask for, beside XHTML and CSS:
 *
 * <ul>
 *   <li>{@code data-place="file:line"}: where an author mends what is wrong here or further in.
 *   <li>{@code data-fit="c18 c16 c14" data-fit-height="39mm" data-what="card 11.2 answer"}: the first class that fits.
 *   <li>{@code data-start="even"} (or odd), after an element of class {@code filler}, which gets {@code filler-on}.
 *   <li>{@code data-trim="16.5 22 264 180"}: left, top, width and height in mm of what is left of its page once it is
 *       cut.
 *   <li>{@code <img src="hutch:figures/eye.svg" alt="…"/>}, or an inline svg with an aria-label or a title; an empty
 *       alt, or none on an svg, makes decoration.
 * </ul>
 */
public final class Press {
    /** More layouts than this do not settle a page: its fillers are not one page each. */
    private static final int MOST_START_ROUNDS = 8;

    private final Typesetter typesetter;
    private final Drawings drawings;

    /**
     * @param figures asked once for each figure a page shows
     */
    public Press(Figures figures) {
        this(figures, Optional.empty());
    }

    /**
     * @param figures asked once for each figure a page shows
     * @param font a TrueType font for letters that Lato and DejaVu Sans lack; scripts that need shaping stay refused
     * @throws UncheckedIOException when it cannot be read
     */
    public Press(Figures figures, Optional<Path> font) {
        this.typesetter = new Typesetter(font);
        this.drawings = new Drawings(figures);
    }

    /** The finished document; empty when an error was added. Warnings tell of style that the engine cannot read. */
    public Optional<Printed> print(Manuscript manuscript, Problems problems) {
        Problems own = new Problems();
        Optional<Printed> printed = XhtmlReader.read(manuscript, own).flatMap(page -> print(page, manuscript, own));
        problems.addAll(own);
        return printed;
    }

    /** Looks for signs in a line of text that the fonts cannot print. */
    public void checkGlyphs(String text, Place at, Problems problems) {
        GlyphCheck.check(text, typesetter.typefaces(), () -> at, problems);
    }

    /**
     * The share of a figure's ink, 0 to 1, that is at least so thick where the figure prints at a width; empty when it
     * cannot be drawn. In millimetres.
     */
    public OptionalDouble inkOf(String path, double width, double least) {
        return drawings.named(path, Place.whole(path), new Problems())
                .map(drawing -> OptionalDouble.of(Ink.of(drawing.svg(), drawing.width() / drawing.height(), width)
                        .shareOf(least)))
                .orElse(OptionalDouble.empty());
    }

    /** Lays the document out and reports what does not fit its place; nothing is painted. */
    public void checkFit(Manuscript manuscript, Problems problems) {
        Problems own = new Problems();
        XhtmlReader.read(manuscript, own)
                .flatMap(document -> drawn(document, manuscript, own)
                        .map(drawn -> settle(document, drawn, Place.whole(manuscript.madeBy()), own)))
                .ifPresent(Galley::close);
        problems.addAll(own);
    }

    private Optional<Map<Element, Drawing>> drawn(Document document, Manuscript manuscript, Problems problems) {
        Place whole = Place.whole(manuscript.madeBy());
        LockCheck.check(document, whole, problems);
        GlyphCheck.check(document, typesetter.typefaces(), whole, problems);
        Map<Element, Drawing> drawn = drawings.of(document, whole, problems);
        return problems.hasErrors() ? Optional.empty() : Optional.of(drawn);
    }

    private Optional<Printed> print(Document document, Manuscript manuscript, Problems problems) {
        Optional<Map<Element, Drawing>> drawn = drawn(document, manuscript, problems);
        return drawn.flatMap(figures -> print(document, figures, manuscript, problems));
    }

    private Optional<Printed> print(
            Document document, Map<Element, Drawing> drawn, Manuscript manuscript, Problems problems) {
        Place whole = Place.whole(manuscript.madeBy());
        document.getDocumentElement().setAttribute("lang", manuscript.language());
        try (Galley galley = settle(document, drawn, whole, problems)) {
            return problems.hasErrors() ? Optional.empty() : Optional.of(printed(galley, document, manuscript));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lays the document out until its texts fit and its parts start on the right pages. */
    private Galley settle(Document document, Map<Element, Drawing> drawn, Place whole, Problems problems) {
        Fitting fitting = new Fitting(document, whole, problems);
        Starts starts = new Starts(document, whole, problems);
        SetAside aside = new SetAside(document);
        int rounds = 0;
        while (true) {
            Galley galley = typesetter.set(document, drawn, complaint -> complain(complaint, whole, problems));
            boolean again = fitting.step(galley);
            if (again) {
                aside.allBut(fitting.open());
            } else {
                again = aside.nothing();
            }
            if (!again && rounds < MOST_START_ROUNDS) {
                again = starts.step(galley);
                rounds++;
            }
            if (!again) {
                starts.report(galley);
                return galley;
            }
            galley.close();
        }
    }

    private static void complain(String complaint, Place whole, Problems problems) {
        problems.warn(whole, "the style holds what cannot be printed: " + complaint.strip(), "mend or leave it out");
    }

    private static Printed printed(Galley galley, Document document, Manuscript manuscript) throws IOException {
        Map<String, Integer> pageOf = new TreeMap<>();
        for (Element element : Dom.elements(document, each -> each.hasAttribute("id"))) {
            galley.page(element).ifPresent(page -> pageOf.putIfAbsent(element.getAttribute("id"), page));
        }
        var pdf = galley.paint();
        byte[] bytes = Finish.finish(pdf, manuscript, Trims.of(document, galley), SavedInk.isAskedFor(document));
        return new Printed(bytes, pdf.getNumberOfPages(), pageOf);
    }
}
