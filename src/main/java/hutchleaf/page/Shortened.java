package hutchleaf.page;

/** Names cut to what a line of a form can hold. */
final class Shortened {
    private Shortened() {}

    /** The text, or as many of its whole words as make up so many letters, with an ellipsis. */
    static String to(String text, int letters) {
        if (text.codePointCount(0, text.length()) <= letters) {
            return text;
        }
        String head = text.substring(0, text.offsetByCodePoints(0, letters - 1));
        int space = head.lastIndexOf(' ');
        return (space > letters / 2 ? head.substring(0, space) : head).replaceAll("[,;\\s]+$", "") + "…";
    }
}
