package hutchleaf.content;

/** Turns the straight quotes that authors type into the curly ones that are printed, one line of words at a time. */
final class Quotes {
    private char before = ' ';

    String curl(String text) {
        StringBuilder curled = new StringBuilder(text.length());
        for (int index = 0; index < text.length(); index++) {
            char letter = text.charAt(index);
            curled.append(
                    switch (letter) {
                        case '"' -> opens() ? '\u201C' : '\u201D';
                        case '\'' -> opens() ? '\u2018' : '\u2019';
                        default -> letter;
                    });
            before = letter;
        }
        return curled.toString();
    }

    /** Something that is not text was written, such as a blank: what follows closes. */
    void pass() {
        before = 'x';
    }

    private boolean opens() {
        return Character.isWhitespace(before) || "([{\"'".indexOf(before) >= 0;
    }
}
