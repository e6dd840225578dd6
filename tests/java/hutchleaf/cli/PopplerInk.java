package hutchleaf.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How much of each page is black as poppler draws it, a renderer that is none of ours. */
final class PopplerInk {
    /** A line of 0.9 pt is 10 dots: poppler makes whole dots of lines. */
    private static final String DOTS_PER_INCH = "800";

    private PopplerInk() {}

    /** Whether this machine has it; the build installs it where it runs by itself. */
    static boolean isThere() {
        try {
            return new ProcessBuilder("pdftoppm", "-v")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The share of each page that is black, 0 to 1. */
    static List<Double> of(Path pdf) throws IOException {
        Process poppler = new ProcessBuilder("pdftoppm", "-gray", "-r", DOTS_PER_INCH, pdf.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<Double> shares = new ArrayList<>();
        try (InputStream in = new BufferedInputStream(poppler.getInputStream(), 1 << 16)) {
            // Netpbm's PGM, one picture behind another: P5, width, height, 255, then a byte for each dot.
            for (String magic = token(in); magic.equals("P5"); magic = token(in)) {
                int dots = Integer.parseInt(token(in)) * Integer.parseInt(token(in));
                token(in);
                shares.add(black(in.readNBytes(dots)));
            }
        }
        return shares;
    }

    private static double black(byte[] dots) {
        long ink = 0;
        for (byte dot : dots) {
            ink += 255 - (dot & 0xff);
        }
        return ink / 255.0 / dots.length;
    }

    private static String token(InputStream in) throws IOException {
        StringBuilder token = new StringBuilder();
        for (int sign = in.read(); sign > ' '; sign = in.read()) {
            token.append((char) sign);
        }
        return token.toString();
    }
}
