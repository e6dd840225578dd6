package hutchleaf.sheet;

/** The papers that clubs print on, held upright. */
public enum Paper {
    /** US Letter, 8.5 by 11 inches (ANSI/ASME Y14.1 size A). */
    LETTER(Length.inches(8.5), Length.inches(11)),
    /** ISO 216 A4, 210 by 297 mm. */
    A4(Length.mm(210), Length.mm(297));

    private final Length width;
    private final Length height;

    Paper(Length width, Length height) {
        this.width = width;
        this.height = height;
    }

    public Length width() {
        return width;
    }

    public Length height() {
        return height;
    }
}
