package hutchleaf.page;

/**
 * One document to print.
 *
 * @param title what a reader's window shows, and the PDF's title
 * @param language BCP 47 tag of the text, for example {@code en-US}
 * @param xhtml a whole XHTML document with its style inside; page size and margins are the style's
 * @param madeBy the template it came from, named when the XHTML cannot be read
 */
public record Manuscript(String title, String language, String xhtml, String madeBy) {}
