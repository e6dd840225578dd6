package hutchleaf.press;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Makes text fit its place: each element with {@code data-fit} gets the first of its classes with which it is no taller
 * than {@code data-fit-height} and nothing sticks out of it. All are tried together, one class per layout. One with
 * {@code data-fit-else="flow"} may run on to the next page instead: if no class fits it gets its first one back,
 * and the class {@code flows}.
 */
final class Fitting {
    private static final String FLOWS = "flows";

    /** The engine books justified lines up to 0.2 mm wider than they are; a word that is too long is off by more. */
    private static final Length WIDTH_TOLERANCE = Length.mm(0.5);

    private final Place fallback;
    private final Problems problems;
    private final List<Trial> open = new ArrayList<>();

    /** Gives every element its first class, for the first layout. */
    Fitting(Document document, Place fallback, Problems problems) {
        this.fallback = fallback;
        this.problems = problems;
        Dom.elements(document, element -> element.hasAttribute("data-fit")).stream()
                .map(Trial::new)
                .forEach(open::add);
    }

    /** Keeps what fits and moves the rest on by one class; true when the page must be laid out again. */
    boolean step(Galley galley) {
        boolean changed = false;
        for (Iterator<Trial> trials = open.iterator(); trials.hasNext(); ) {
            Trial trial = trials.next();
            if (trial.fits(galley)) {
                trials.remove();
            } else if (trial.next()) {
                changed = true;
            } else if (trial.flows()) {
                trial.loosen();
                changed = true;
                trials.remove();
            } else {
                report(trial, galley);
                trials.remove();
            }
        }
        return changed;
    }

    /** The elements that have not found their class yet. */
    List<Element> open() {
        return open.stream().map(trial -> trial.element).toList();
    }

    private void report(Trial trial, Galley galley) {
        Length tall = trial.tooTall(galley);
        boolean height = tall.compareTo(Length.TOLERANCE) > 0;
        Length over = height ? tall : galley.overhang(trial.element);
        String what = String.format(
                Locale.ROOT,
                "%s is %.1f mm too %s even at its smallest",
                trial.what(),
                over.mm(),
                height ? "tall" : "wide");
        String mend = height ? "write it shorter" : "break up or shorten its longest word";
        problems.add(Dom.place(trial.element, fallback), what, mend);
    }

    private static final class Trial {
        private final Element element;
        private final List<String> classes;
        private int at;

        Trial(Element element) {
            this.element = element;
            this.classes =
                    Arrays.asList(element.getAttribute("data-fit").strip().split("\\s+", -1));
            Dom.addClass(element, classes.get(0));
        }

        boolean fits(Galley galley) {
            return tooTall(galley).compareTo(Length.TOLERANCE) <= 0
                    && galley.overhang(element).compareTo(WIDTH_TOLERANCE) <= 0;
        }

        /** By how much it is taller than allowed, zero or less when it is not; no limit means any height will do. */
        Length tooTall(Galley galley) {
            String limit = element.getAttribute("data-fit-height").strip();
            if (limit.isEmpty()) {
                return Length.ZERO;
            }
            return galley.height(element)
                    .map(height -> height.minus(millimetres(limit)))
                    .orElse(Length.ZERO);
        }

        private static Length millimetres(String text) {
            if (!text.endsWith("mm")) {
                throw new IllegalArgumentException("data-fit-height='" + text + "' is not in mm");
            }
            return Length.mm(Double.parseDouble(text.substring(0, text.length() - 2)));
        }

        boolean next() {
            if (at + 1 == classes.size()) {
                return false;
            }
            Dom.removeClass(element, classes.get(at));
            at++;
            Dom.addClass(element, classes.get(at));
            return true;
        }

        boolean flows() {
            return element.getAttribute("data-fit-else").equals("flow");
        }

        /** Gives the first class back. */
        void loosen() {
            Dom.removeClass(element, classes.get(at));
            Dom.addClass(element, classes.get(0));
            Dom.addClass(element, FLOWS);
        }

        String what() {
            return element.hasAttribute("data-what") ? element.getAttribute("data-what") : "this text";
        }
    }
}
