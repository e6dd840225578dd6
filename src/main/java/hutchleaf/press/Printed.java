package hutchleaf.press;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A finished PDF, with its page count and where its parts landed. */
public final class Printed {
    private final byte[] pdf;
    private final int pages;
    private final Map<String, Integer> pageOf;

    /** Taken apart when it is first bound, and kept: a part that many files share is read once. */
    private @Nullable Part part;

    /** The files that this one was bound from, with all their pages in order; none where it was not. */
    private final List<Printed> boundFrom;

    /** Measured when it is first asked for, and kept. */
    private @Nullable List<Double> ink;

    /**
     * @param pageOf the 1-based page on which each element with an {@code id} starts
     */
    public Printed(byte[] pdf, int pages, Map<String, Integer> pageOf) {
        this(pdf, pages, pageOf, List.of());
    }

    Printed(byte[] pdf, int pages, Map<String, Integer> pageOf, List<Printed> boundFrom) {
        this.boundFrom = List.copyOf(boundFrom);
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

    /**
     * The share of each page that is black; where this was bound, of the pages of its parts.
     *
     * @param measure tells it of a file
     */
    synchronized List<Double> ink(Function<byte[], List<Double>> measure) {
        List<Double> known = ink;
        if (known == null) {
            known = boundFrom.isEmpty()
                    ? List.copyOf(measure.apply(pdf))
                    : boundFrom.stream()
                            .flatMap(part -> part.ink(measure).stream())
                            .toList();
            ink = known;
        }
        return known;
    }

    /** Some of its pages taken apart, by their 1-based numbers. */
    Part part(Set<Integer> kept) {
        return PartReader.read(pdf, kept::contains);
    }
}
