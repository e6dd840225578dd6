package hutchleaf.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PreviewTest {
    /** The first eight bytes of every PNG: W3C Recommendation "PNG (Third Edition)", 5.2, from memory. */
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    /** Letter at 40 dots an inch. */
    private static final int WIDTH = 340;

    private static final int HEIGHT = 440;

    @ParameterizedTest
    @CsvSource({"1, 1", "12, 1", "13, 2", "24, 2", "25, 3"})
    void twelvePagesMakeASheet(int pages, int sheets) {
        assertThat(Preview.sheets(pages)).isEqualTo(sheets);
    }

    @Test
    void aDocumentOfThirteenPagesMakesTwoPictures() throws IOException {
        List<byte[]> pictures = pictures(document(13));
        assertThat(pictures)
                .hasSize(2)
                .allSatisfy(picture -> assertThat(picture).startsWith(PNG));
        BufferedImage first = image(pictures.get(0));
        BufferedImage second = image(pictures.get(1));
        assertThat(first.getColorModel().getNumComponents()).as("grey").isEqualTo(1);
        assertThat(first.getWidth()).as("four across").isBetween(4 * WIDTH, 4 * (WIDTH + 20));
        assertThat(first.getHeight()).as("three down").isBetween(3 * HEIGHT, 3 * (HEIGHT + 40));
        assertThat(second.getWidth()).as("one page").isBetween(WIDTH, WIDTH + 40);
        assertThat(second.getHeight()).as("one page").isBetween(HEIGHT, HEIGHT + 60);
    }

    @Test
    void theSameDocumentGivesTheSameBytes() {
        assertThat(pictures(document(2)).get(0)).isEqualTo(pictures(document(2)).get(0));
    }

    @Test
    void theThinnestLineOfAPageIsSeenWhereverItFalls() throws IOException {
        String lines = IntStream.range(0, 30)
                .mapToObj(no -> "<div style=\"position:absolute;left:0;width:100mm;top:" + no * 7.13
                        + "mm;height:0;border-top:0.9pt solid black\"></div>")
                .reduce("", String::concat);
        Printed printed =
                Proofs.print(Proofs.page("", "<h1>Lines</h1><div style=\"position:relative\">" + lines + "</div>"));
        BufferedImage sheet = image(pictures(printed).get(0));
        // A column of dots 100 mm from the left of the page crosses all thirty.
        int x = 12 + Math.round(100 / 25.4f * 40);
        int dark = 0;
        boolean inside = false;
        for (int y = 12; y < 12 + HEIGHT; y++) {
            boolean now = sheet.getRaster().getSample(x, y, 0) < 200;
            dark += now && !inside ? 1 : 0;
            inside = now;
        }
        assertThat(dark).isEqualTo(30);
    }

    @Test
    void pagesOfTwoSizesStandOnOneSheetEachInItsOwnShape() throws IOException {
        Printed upright = document(1);
        Printed sideways = Proofs.print(Proofs.page("@page { size: 279.4mm 215.9mm }", "<h1>Sideways</h1>"));
        Printed both = Merge.of("Both", "en-GB", List.of(upright, sideways));
        BufferedImage sheet = image(pictures(both).get(0));
        int second = 12 + HEIGHT + 12;
        assertThat(white(sheet, second + 5, 12 + WIDTH - 5))
                .as("foot of the page held sideways")
                .isTrue();
        assertThat(white(sheet, second + HEIGHT - 5, 12 + 5))
                .as("its right edge")
                .isTrue();
        assertThat(white(sheet, second + 5, 12 + WIDTH + 40)).as("below it").isFalse();
        assertThat(white(sheet, 12 + 5, 12 + HEIGHT - 5))
                .as("foot of the upright page")
                .isTrue();
    }

    private static boolean white(BufferedImage sheet, int x, int y) {
        return sheet.getRaster().getSample(x, y, 0) > 250;
    }

    private static Printed document(int pages) {
        StringBuilder body = new StringBuilder("<h1>Page 1</h1>");
        for (int page = 2; page <= pages; page++) {
            body.append("<h1 style=\"page-break-before:always\">Page ")
                    .append(page)
                    .append("</h1>");
        }
        return Proofs.print(Proofs.page("", body.toString()));
    }

    private static List<byte[]> pictures(Printed printed) {
        List<byte[]> pictures = new ArrayList<>();
        Preview.of(printed, (no, png) -> {
            assertThat(no).isEqualTo(pictures.size() + 1);
            pictures.add(png);
        });
        return pictures;
    }

    private static BufferedImage image(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }
}
