package hutchleaf.press;

/** Text made safe to stand in XML. */
final class Xml {
    private Xml() {}

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
