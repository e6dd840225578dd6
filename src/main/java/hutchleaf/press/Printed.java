package hutchleaf.press;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Map;

/** A finished PDF, with its page count and where its parts landed. */
public final class Printed {
    private final byte[] pdf;
    private final int pages;
    private final Map<String, Integer> pageOf;

    /**
     * @param pageOf the 1-based page on which each element with an {@code id} starts
     */
    public Printed(byte[] pdf, int pages, Map<String, Integer> pageOf) {
        this.pdf = pdf.clone();
        this.pages = pages;
        this.pageOf = Map.copyOf(pageOf);
    }

    /** The file's bytes, from the start. */
    public InputStream open() {
        return new ByteArrayInputStream(pdf);
    }

    public int pages() {
        return pages;
    }

    public Map<String, Integer> pageOf() {
        return pageOf;
    }
}
