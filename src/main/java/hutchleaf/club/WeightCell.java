package hutchleaf.club;

import hutchleaf.model.Weight;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a rabbit weighs, from a cell in pounds, in kilograms, or one that names its unit. */
final class WeightCell {
    private static final Pattern FORM = Pattern.compile(
            "(?<number>\\d{1,3}(?:[.,]\\d{1,3})?)\\s*(?:(?<kg>kgs?)|(?<lb>lbs?)(?:\\s*(?<oz>\\d{1,2}(?:\\.\\d)?)\\s*oz)?)?",
            Pattern.CASE_INSENSITIVE);
    private static final int OUNCES_A_POUND = 16;

    /** No rabbit outside these is shown: own rule, to catch a slip of the pen. In pounds. */
    private static final double LEAST = 0.3;

    private static final double MOST = 40;

    private WeightCell() {}

    /**
     * The weight, if the row gives one.
     *
     * @param comma whether a decimal comma is read, as in a file whose cells are not parted by commas
     */
    static Optional<Weight> read(Cells cells, boolean comma) {
        Optional<Weight> found = Optional.empty();
        for (Column column : new Column[] {Column.WEIGHT_LB, Column.WEIGHT_KG, Column.WEIGHT}) {
            if (cells.has(column)) {
                if (found.isPresent()) {
                    cells.error("two weights in this row", "keep one of them");
                }
                found = read(cells, column, comma);
            }
        }
        return found;
    }

    private static Optional<Weight> read(Cells cells, Column column, boolean comma) {
        String text = cells.text(column);
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            cells.unreadable(column, "write a number, for example 4.5, or leave the cell empty");
            return Optional.empty();
        }
        if (text.contains(",") && !comma) {
            cells.unreadable(column, "write it with a point: " + text.replace(',', '.'));
            return Optional.empty();
        }
        boolean unit = form.group("kg") != null || form.group("lb") != null;
        if (!unit && column == Column.WEIGHT) {
            cells.unreadable(column, "name the unit, " + text + " lb or " + text + " kg, or the column weight_lb");
            return Optional.empty();
        }
        boolean kilograms = unit ? form.group("kg") != null : column == Column.WEIGHT_KG;
        Weight weight = weight(form, kilograms);
        if (weight.pounds() < LEAST || weight.pounds() > MOST) {
            cells.unreadable(column, "no rabbit on a show table weighs " + weight.asWritten() + ": look at the unit");
            return Optional.empty();
        }
        return Optional.of(weight);
    }

    private static Weight weight(Matcher form, boolean kilograms) {
        String number = form.group("number").replace(',', '.');
        double read = Double.parseDouble(number);
        if (kilograms) {
            return Weight.ofKilograms(read, number + " kg");
        }
        String ounces = form.group("oz");
        return ounces == null
                ? Weight.ofPounds(read, number + " lb")
                : Weight.ofPounds(
                        read + Double.parseDouble(ounces) / OUNCES_A_POUND,
                        String.format(Locale.ROOT, "%s lb %s oz", number, ounces));
    }
}
