package hutchleaf.press;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A finished PDF, with its page count and where its parts landed. */
public final class Printed {
    private final byte[] pdf;
    private final int pages;
    private final Map<String, Integer> pageOf;

    /** Taken apart when it is first bound, and kept: a part that many files share is read once. */
    private @Nullable Part part;

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

    /** This file taken apart for binding. */
    synchronized Part part() {
        Part known = part;
        if (known == null) {
            known = PartReader.read(pdf, page -> true);
            part = known;
        }
        return known;
    }

    /** Some of its pages taken apart, by their 1-based numbers. */
    Part part(Set<Integer> kept) {
        return PartReader.read(pdf, kept::contains);
    }
}
