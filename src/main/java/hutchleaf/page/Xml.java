package hutchleaf.page;

/** A piece of finished XHTML: templates print it as it is, everything else they escape. */
record Xml(String text) {
    /** Text made safe for XHTML. */
    static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        for (int index = 0; index < text.length(); index++) {
            char letter = text.charAt(index);
            switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.append(letter);
            }
        }
        return safe.toString();
    }

    @Override
    public String toString() {
        return text;
    }
}
