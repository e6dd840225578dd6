package hutchleaf.page;

/** Names cut to what a line of a form can hold. Widths are ems of Lato regular, about 3 % too wide rather than too narrow. */
final class Shortened {
    private static final double ELLIPSIS = 0.8;
    private static final String NARROW = "fijlrtI.,;:!|'’()-";
    private static final String WIDE = "mwMW@%…";

    private Shortened() {}

    /** The text, or as many of its whole words as take so many ems, with an ellipsis. */
    static String to(String text, double ems) {
        if (ems(text) <= ems) {
            return text;
        }
        int end = text.length();
        while (end > 0 && ems(text.substring(0, end)) + ELLIPSIS > ems) {
            end = text.offsetByCodePoints(end, -1);
        }
        int space = text.lastIndexOf(' ', end);
        String head = text.substring(0, space > end / 2 ? space : end);
        return head.replaceAll("[,;\\s]+$", "") + "…";
    }

    /** About how wide a text is. */
    static double ems(String text) {
        return text.codePoints().mapToDouble(Shortened::ems).sum();
    }

    private static double ems(int letter) {
        if (letter == ' ') {
            return 0.22;
        } else if (NARROW.indexOf(letter) >= 0) {
            return 0.33;
        } else if (WIDE.indexOf(letter) >= 0) {
            return Character.isUpperCase(letter) ? 1 : 0.84;
        }
        return Character.isUpperCase(letter) ? 0.68 : 0.54;
    }
}
