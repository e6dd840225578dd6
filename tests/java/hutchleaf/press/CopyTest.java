package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure, at the smallest width it may be printed, lives through a copy of a copy: 150 dots an inch, blurred and cut
 * to one bit, twice. No line that is 0.9 pt or thicker on a rendering of 600 dots an inch breaks for over 1 mm.
 */
final class CopyTest {
    private static final Path FIGURES = Path.of("content/figures");
    private static final Pattern WIDTH = Pattern.compile("data-min-width=\"(\\d+(?:\\.\\d+)?)mm\"");
    private static final double MM_PER_INCH = 25.4;

    /** 0.9 pt. */
    private static final double LINE = 0.9 * 25.4 / 72;

    /** Half of the longest break. */
    private static final double REACH = 0.5;

    private static final int FINE = 600;
    private static final int COARSE = 150;

    static Stream<String> figures() throws IOException {
        try (Stream<Path> files = Files.list(FIGURES)) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".svg"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("figures")
    void noLineOfAFigureBreaksOnACopyOfACopy(String name) throws IOException {
        Path file = FIGURES.resolve(name);
        Matcher width = WIDTH.matcher(Files.readString(file));
        assertThat(width.find()).as(name + " states its smallest width").isTrue();
        double millimetres = Double.parseDouble(width.group(1));
        SVGDocument svg =
                Objects.requireNonNull(new SVGLoader().load(file.toUri().toURL()), name);
        double ratio = svg.viewBox().getWidth() / svg.viewBox().getHeight();
        Ink original = Ink.of(svg, ratio, millimetres);
        double[][] copied = copy(copy(render(svg, millimetres)));
        boolean[] thick = original.thick(LINE);
        for (int y = 0; y < original.height(); y++) {
            for (int x = 0; x < original.width(); x++) {
                if (thick[y * original.width() + x] && !near(copied, x, y)) {
                    fail(String.format(
                            Locale.ROOT,
                            "%s: the line at %.1f, %.1f mm is gone from the copy",
                            name,
                            x * MM_PER_INCH / FINE,
                            y * MM_PER_INCH / FINE));
                }
            }
        }
    }

    /** Whether the copy has ink within reach of a dot of the original. */
    private static boolean near(double[][] copied, int x, int y) {
        int reach = (int) Math.floor(REACH / MM_PER_INCH * COARSE);
        int atX = x * COARSE / FINE;
        int atY = y * COARSE / FINE;
        for (int dy = -reach; dy <= reach; dy++) {
            for (int dx = -reach; dx <= reach; dx++) {
                if (at(copied, atX + dx, atY + dy) > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double[][] render(SVGDocument svg, double millimetres) {
        int width = (int) Math.round(millimetres / MM_PER_INCH * COARSE);
        int height = (int)
                Math.round(width * svg.viewBox().getHeight() / svg.viewBox().getWidth());
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        svg.render(null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        double[][] ink = new double[height][width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                ink[y][x] = 1 - (image.getRGB(x, y) & 0xff) / 255.0;
            }
        }
        return ink;
    }

    /** Blurred by the weights 1 2 1 both ways, then cut to one bit at the half. */
    private static double[][] copy(double[][] ink) {
        double[][] copied = new double[ink.length][ink[0].length];
        for (int y = 0; y < ink.length; y++) {
            for (int x = 0; x < ink[0].length; x++) {
                double sum = 0;
                for (int dy = -1; dy <= 1; dy++) {
                    for (int dx = -1; dx <= 1; dx++) {
                        sum += at(ink, x + dx, y + dy) * (2 - Math.abs(dx)) * (2 - Math.abs(dy));
                    }
                }
                copied[y][x] = sum / 16 >= 0.5 ? 1 : 0;
            }
        }
        return copied;
    }

    private static double at(double[][] ink, int x, int y) {
        return x >= 0 && y >= 0 && y < ink.length && x < ink[0].length ? ink[y][x] : 0;
    }
}
