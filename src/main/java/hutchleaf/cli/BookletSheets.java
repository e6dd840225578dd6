package hutchleaf.cli;

import hutchleaf.press.Imposition;
import hutchleaf.press.Printed;
import hutchleaf.sheet.Booklet;
import hutchleaf.sheet.Booklet.Binding;
import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.Paper;

/** What booklets are printed on, and how they are held together. */
record BookletSheets(Paper paper, Grammage weight, Binding binding) {
    Booklet booklet(Printed pages) {
        return Booklet.of(pages.pages(), binding);
    }

    /**
     * The sheets of finished half-sheet pages.
     *
     * @param language BCP 47 tag
     */
    Printed of(String title, String language, Printed pages) {
        return Imposition.of(title, language, pages, booklet(pages), paper, weight);
    }
}
