package hutchleaf.press;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A printed page that was put on a copier: looked at with so many dots an inch, blurred and cut to one bit, once or
 * twice. It is held against the page itself at 600 dots an inch, one bit each, as a printer lays it.
 */
public final class CopiedPage {
    /**
     * How a page was copied.
     *
     * @param dots an inch, a divisor of 600
     * @param times once, or the copy once more
     */
    public record Copier(int dots, int times) {
        /** An old machine, twice. */
        public static final Copier A_COPY_OF_A_COPY = new Copier(150, 2);

        /** A machine of today, once. */
        public static final Copier A_GOOD_COPY = new Copier(300, 1);
    }

    private static final double MM_PER_INCH = 25.4;
    private static final int FINE = 600;

    /** Of a word's ink, so much has to live. */
    private static final double KEPT = 0.6;

    /** Of its dots, so many have to be black at the same spot; the letters of short words move by half a coarse dot. */
    private static final double SAME = 0.5;

    /** More of a word's box than this is black where white letters stand on black. */
    private static final double REVERSED = 0.5;

    /** 0.9 pt, in fine dots, less the rounding of a dot. */
    private static final int LINE = (int) (0.9 / 72 * FINE);

    /** What runs straight for so long is a rule where it is as thick as one: 4 mm in fine dots. */
    private static final int RULE = (int) (4 / MM_PER_INCH * FINE);

    /** Half of the longest break, in mm. */
    private static final double REACH = 0.5;

    /** Every line is thicker than the distance of the dots that are looked at. */
    private static final int STEP = 3;

    private final byte[] bits;
    private final int stride;
    private final int width;
    private final int height;
    private final int across;
    private final int down;
    private final boolean[] copy;

    /** Fine dots along a side of one that the copier sees. */
    private final int block;

    private final int reach;

    private CopiedPage(BufferedImage fine, Copier copier) {
        this.block = FINE / copier.dots();
        this.reach = (int) (REACH / MM_PER_INCH * copier.dots());
        this.bits = ((DataBufferByte) fine.getRaster().getDataBuffer()).getData();
        this.width = fine.getWidth();
        this.height = fine.getHeight();
        this.stride = (width + 7) / 8;
        this.across = width / block;
        this.down = height / block;
        boolean[] copied = copy(seen());
        for (int time = 1; time < copier.times(); time++) {
            copied = copy(numbers(copied));
        }
        this.copy = copied;
    }

    /** The same of some pages: the first two, one in the middle and the last two. */
    public static List<String> lost(byte[] pdf, Copier copier) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pages = document.getNumberOfPages();
            return lost(
                    pdf,
                    copier,
                    List.copyOf(new TreeSet<>(
                            List.of(1, Math.min(2, pages), (pages + 1) / 2, Math.max(1, pages - 1), pages))));
        }
    }

    /**
     * What a copy of a copy lost, a sentence each: words that keep less than 60 % of their black dots, rules that break for
     * over 1 mm.
     */
    public static List<String> lost(byte[] pdf, Copier copier, List<Integer> pages) {
        List<String> lost = new ArrayList<>();
        var words = PdfWords.of(pdf).stream().collect(Collectors.groupingBy(PdfWords.Word::page));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page : pages) {
                CopiedPage copy = new CopiedPage(renderer.renderImageWithDPI(page - 1, FINE, ImageType.BINARY), copier);
                words.getOrDefault(page, List.of()).forEach(word -> copy.word(word, lost));
                copy.rules(page, lost);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lost;
    }

    /** Points and strokes alone are no word; a full stop of the smallest type does not live through two copies. */
    private void word(PdfWords.Word word, List<String> lost) {
        if (word.text().codePoints().noneMatch(Character::isLetterOrDigit)) {
            return;
        }
        double size = word.size() / 72 * FINE;
        double baseline = word.y() / MM_PER_INCH * FINE;
        int left = (int) Math.max(0, word.x() / MM_PER_INCH * FINE);
        int right = (int) Math.min(width - 1, left + word.width() / MM_PER_INCH * FINE);
        int top = (int) Math.max(0, baseline - 0.75 * size);
        int bottom = (int) Math.min(height - 1, baseline + 0.22 * size);
        int[] ink = {0, 0};
        int[] copied = {0, 0};
        int[] same = {0, 0};
        for (int y = top; y <= bottom; y++) {
            for (int x = left; x <= right; x++) {
                int was = black(x, y) ? 1 : 0;
                int is = atCopy(x / block, y / block) ? 1 : 0;
                ink[was]++;
                copied[is]++;
                same[was] += is == was ? 1 : 0;
            }
        }
        int letters = ink[1] > REVERSED * (ink[0] + ink[1]) ? 0 : 1;
        if (copied[letters] < KEPT * ink[letters] || same[letters] < SAME * ink[letters]) {
            lost.add(String.format(
                    Locale.ROOT,
                    "%s keeps %d %% of its ink, %d %% where it was",
                    word,
                    Math.round(100.0 * copied[letters] / ink[letters]),
                    Math.round(100.0 * same[letters] / ink[letters])));
        }
    }

    private void rules(int page, List<String> lost) {
        boolean[] near = spread();
        for (int y = 0; y < height; y += STEP) {
            for (int x = 0; x < width; x += STEP) {
                if (black(x, y)
                        && !near[Math.min(y / block, down - 1) * across + Math.min(x / block, across - 1)]
                        && isRule(x, y)) {
                    lost.add(String.format(
                            Locale.ROOT,
                            "p%d: the rule at %.1f, %.1f mm is gone",
                            page,
                            x * MM_PER_INCH / FINE,
                            y * MM_PER_INCH / FINE));
                    // One tells where to look.
                    return;
                }
            }
        }
    }

    /** Thinner lines are refused where pages are read back; hairs and tapering ends of figures are left to {@code CopyTest}. */
    private boolean isRule(int x, int y) {
        int level = run(x, y, 1, 0);
        int upright = run(x, y, 0, 1);
        return Math.max(level, upright) >= RULE && Math.min(level, upright) >= LINE;
    }

    private int run(int x, int y, int dx, int dy) {
        int length = 1;
        for (int sign = -1; sign <= 1; sign += 2) {
            for (int far = 1; black(x + sign * far * dx, y + sign * far * dy); far++) {
                length++;
            }
        }
        return length;
    }

    /** The copy with every dot as large as the longest break allows. */
    private boolean[] spread() {
        boolean[] near = new boolean[copy.length];
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                if (copy[y * across + x]) {
                    for (int dy = Math.max(0, y - reach); dy <= Math.min(down - 1, y + reach); dy++) {
                        for (int dx = Math.max(0, x - reach); dx <= Math.min(across - 1, x + reach); dx++) {
                            near[dy * across + dx] = true;
                        }
                    }
                }
            }
        }
        return near;
    }

    private boolean black(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && (bits[y * stride + (x >> 3)] & (0x80 >> (x & 7))) == 0;
    }

    private boolean atCopy(int x, int y) {
        return x < across && y < down && copy[y * across + x];
    }

    /** As a scanner sees it: how many fine dots of each coarse one are black. */
    private int[] seen() {
        int[] grey = new int[across * down];
        for (int y = 0; y < down * block; y++) {
            for (int x = 0; x < across * block; x++) {
                grey[y / block * across + x / block] += black(x, y) ? 1 : 0;
            }
        }
        return grey;
    }

    private int[] numbers(boolean[] copy) {
        int[] grey = new int[copy.length];
        for (int i = 0; i < copy.length; i++) {
            grey[i] = copy[i] ? block * block : 0;
        }
        return grey;
    }

    /** Blurred by the weights 1 2 1 both ways, then cut to one bit at the half. */
    private boolean[] copy(int[] grey) {
        boolean[] cut = new boolean[grey.length];
        for (int y = 1; y < down - 1; y++) {
            for (int x = 1; x < across - 1; x++) {
                int at = y * across + x;
                int sum = row(grey, at - across) + 2 * row(grey, at) + row(grey, at + across);
                cut[at] = sum * 2 >= 16 * block * block;
            }
        }
        return cut;
    }

    private static int row(int[] grey, int at) {
        return grey[at - 1] + 2 * grey[at] + grey[at + 1];
    }
}
