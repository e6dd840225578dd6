package hutchleaf.cli;

import hutchleaf.press.Imposition;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Booklet;
import hutchleaf.sheet.Booklet.Binding;
import hutchleaf.sheet.Grammage;
import hutchleaf.sheet.Paper;

/** What booklets are printed on and by what, and how they are held together. */
record BookletSheets(Paper paper, Grammage weight, Binding binding, PrinterSetting printer) {
    Booklet booklet(Printed pages) {
        return Booklet.of(pages.pages(), binding);
    }

    /**
     * The sheets of finished half-sheet pages, as the printer needs them.
     *
     * @param language BCP 47 tag
     * @param file for problems
     */
    Printed of(String title, String language, Printed pages, String file, Problems problems) {
        Printed sheets = Imposition.of(title, language, pages, booklet(pages), paper, weight);
        return printer.correct(sheets, binding.backs(), file, problems);
    }
}
