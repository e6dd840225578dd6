package hutchleaf.sheet;

/** A page of half a sheet, held upright, as a sheet folded once gives it. */
public record HalfSheet(Length width, Length height) {
    /** Half of Letter, or ISO 216 A5: of a halved size the part of a millimetre is dropped. */
    public static HalfSheet of(Paper paper) {
        Length half = paper.height().times(0.5);
        return switch (paper) {
            case LETTER -> new HalfSheet(half, paper.width());
            case A4 -> new HalfSheet(Length.mm(Math.floor(half.mm())), paper.width());
        };
    }
}
