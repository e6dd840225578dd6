package hutchleaf.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * Tells whether a page has to be printed again. A page's digest is that of its size, its words in their order and
 * everything drawn on it; where words stand does not count, nor do tags, links and how the file is put together.
 */
public final class PageDigests {
    /** Enough for no two pages ever to be taken for one. */
    private static final int BYTES = 16;

    private PageDigests() {}

    /**
     * One digest for each page, in order: 32 hexadecimal digits, the same in every run.
     *
     * @param ignored words that do not count wherever they stand, such as a line with the edition's date; line breaks
     *     and spaces in them do not matter, but they must be of one style; may be empty
     */
    public static List<String> of(Printed printed, String ignored) {
        try (InputStream in = printed.open();
                PDDocument pdf = Loader.loadPDF(in.readAllBytes())) {
            Pattern left = pattern(ignored);
            PageRecord records = new PageRecord();
            List<String> digests = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                digests.add(digest(records.of(page), left));
            }
            return digests;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Finds the words however they are broken into lines; nothing when there are none. */
    private static Pattern pattern(String ignored) {
        String signs = ignored.replaceAll("\\s", "");
        if (signs.isEmpty()) {
            return Pattern.compile("(?!)");
        }
        return Pattern.compile(signs.codePoints()
                .mapToObj(sign -> Pattern.quote(Character.toString(sign)))
                .collect(Collectors.joining("\\s*")));
    }

    private static String digest(PageRecord.Page page, Pattern ignored) {
        String words = ignored.matcher(page.words()).replaceAll(" ");
        String all = words.replaceAll("\\s+", " ").strip() + "\0" + page.drawn();
        return HexFormat.of().formatHex(Digest.of(all.getBytes(StandardCharsets.UTF_8)), 0, BYTES);
    }
}
