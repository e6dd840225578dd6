package hutchleaf.press;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;

/**
 * How thick the lines of a drawing are, measured on a rendering of 600 dots an inch. The thickness at a black dot is the
 * shortest of the black runs through it in four directions: for a line of any slope that is its width, or up to 8 % more.
 */
final class Ink {
    private static final double DOTS_PER_MM = 600 / 25.4;
    private static final double DIAGONAL = Math.sqrt(2);

    private final boolean[] black;
    private final int width;
    private final int height;

    private Ink(boolean[] black, int width, int height) {
        this.black = black;
        this.width = width;
        this.height = height;
    }

    /** A drawing as it prints at a width in millimetres. */
    static Ink of(SVGDocument svg, double ratio, double widthMm) {
        int width = (int) Math.round(widthMm * DOTS_PER_MM);
        int height = Math.max(1, (int) Math.round(width / ratio));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        svg.render(null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        byte[] grey = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        boolean[] black = new boolean[grey.length];
        for (int i = 0; i < grey.length; i++) {
            black[i] = (grey[i] & 0xff) < 128;
        }
        return new Ink(black, width, height);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** The share of the ink, 0 to 1, that is at least so thick; 1 for a drawing without ink. */
    double shareOf(double leastMm) {
        boolean[] thick = thick(leastMm);
        int all = 0;
        int kept = 0;
        for (int i = 0; i < black.length; i++) {
            all += black[i] ? 1 : 0;
            kept += thick[i] ? 1 : 0;
        }
        return all == 0 ? 1 : (double) kept / all;
    }

    /** The dots, row by row, whose ink is at least so thick. */
    boolean[] thick(double leastMm) {
        double least = leastMm * DOTS_PER_MM;
        double[] thickness = new double[black.length];
        Arrays.fill(thickness, Double.MAX_VALUE);
        runs(thickness, 1, 0, 1);
        runs(thickness, 0, 1, 1);
        runs(thickness, 1, 1, DIAGONAL);
        runs(thickness, 1, -1, DIAGONAL);
        boolean[] thick = new boolean[black.length];
        for (int i = 0; i < black.length; i++) {
            thick[i] = black[i] && thickness[i] >= least;
        }
        return thick;
    }

    /** Walks every line of one direction and notes the length of each black run on its dots. */
    private void runs(double[] thickness, int dx, int dy, double step) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                boolean starts = black[y * width + x] && !isBlack(x - dx, y - dy);
                if (starts) {
                    int length = 0;
                    while (isBlack(x + length * dx, y + length * dy)) {
                        length++;
                    }
                    for (int i = 0; i < length; i++) {
                        int at = (y + i * dy) * width + x + i * dx;
                        thickness[at] = Math.min(thickness[at], length * step);
                    }
                }
            }
        }
    }

    private boolean isBlack(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && black[y * width + x];
    }
}
