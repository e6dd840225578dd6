package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.page.PdfInk.Shape;
import hutchleaf.press.PdfUa;
import hutchleaf.press.PdfWords;
import hutchleaf.press.PdfWords.Word;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Figures and their words, read back from finished PDFs. The first figure to label is the rabbit from the side. */
final class FiguresTest {
    private static final Pattern PART = Pattern.compile(
            "<circle id=\"at-[^\"]+\" cx=\"([\\d.]+)\" cy=\"([\\d.]+)\"[^>]*data-level=\"(\\w+)\"[^>]*><title>([^<]+)</title>");
    private static final double DOT = 1.8;

    private record Part(String word, double x, double y) {}

    private static byte[] labelIt(Level level) {
        return RealTree.bytes(RealTree.labelIt(level, Paper.LETTER));
    }

    /** What the file itself says a level sees, read without the program. */
    private static List<Part> parts(String file, Level level) throws IOException {
        List<Part> parts = new ArrayList<>();
        Set<String> words = new TreeSet<>();
        Matcher part = PART.matcher(Files.readString(Path.of("content", file)));
        while (part.find()) {
            Level from = Level.of(part.group(3)).orElseThrow();
            if (from.compareTo(level) <= 0 && words.add(part.group(4))) {
                parts.add(
                        new Part(part.group(4), Double.parseDouble(part.group(1)), Double.parseDouble(part.group(2))));
            }
        }
        return parts;
    }

    /** The figures a level labels, in the order of its sheets: each has a page with words, then a blank one. */
    private static List<String> figures(Level level) throws IOException {
        List<String> figures = new ArrayList<>();
        for (String row : Files.readAllLines(Path.of("content/figures/label-it.md"))) {
            String[] cells = row.split("\\s*\\|\\s*", -1);
            boolean data = cells.length > 3 && cells[1].endsWith(".svg");
            if (data
                    && Level.of(cells[3]).orElseThrow().compareTo(level) <= 0
                    && parts(cells[1], level).size() >= 3) {
                figures.add(cells[1]);
            }
        }
        return figures;
    }

    @ParameterizedTest
    @EnumSource
    void everyLineOfEveryFigureEndsOnItsPart(Level level) throws IOException {
        List<String> figures = figures(level);
        assertThat(figures).isNotEmpty();
        for (int i = 0; i < figures.size(); i++) {
            endsOnItsPart(figures.get(i), parts(figures.get(i), level), PdfInk.shapes(labelIt(level), 2 * i + 1));
        }
    }

    private static void endsOnItsPart(String figure, List<Part> parts, List<Shape> shapes) {
        List<Shape> dots = shapes.stream()
                .filter(shape -> Math.abs(shape.w() - DOT) < 0.02 && Math.abs(shape.h() - DOT) < 0.02)
                .distinct()
                .toList();
        assertThat(dots).as(figure).hasSameSizeAs(parts);
        // Scale and place follow from the outermost dots; then every part has to lie under a dot.
        double left = parts.stream().mapToDouble(Part::x).min().orElseThrow();
        double right = parts.stream().mapToDouble(Part::x).max().orElseThrow();
        double top = parts.stream().mapToDouble(Part::y).min().orElseThrow();
        double dotLeft = dots.stream().mapToDouble(FiguresTest::x).min().orElseThrow();
        double dotRight = dots.stream().mapToDouble(FiguresTest::x).max().orElseThrow();
        double dotTop = dots.stream().mapToDouble(FiguresTest::y).min().orElseThrow();
        double scale = (dotRight - dotLeft) / (right - left);
        for (Part part : parts) {
            double x = dotLeft + (part.x() - left) * scale;
            double y = dotTop + (part.y() - top) * scale;
            assertThat(dots)
                    .as(String.format(
                            Locale.ROOT, "%s: a dot within 0.5 mm of '%s' at %.1f, %.1f mm", figure, part.word(), x, y))
                    .anySatisfy(dot ->
                            assertThat(Math.hypot(x(dot) - x, y(dot) - y)).isLessThan(0.5));
        }
    }

    private static double x(Shape shape) {
        return shape.x() + shape.w() / 2;
    }

    private static double y(Shape shape) {
        return shape.y() + shape.h() / 2;
    }

    @ParameterizedTest
    @EnumSource
    void noWordStandsOverAnotherOnAnyPage(Level level) {
        Map<Integer, List<Word>> pages =
                PdfWords.of(labelIt(level)).stream().collect(Collectors.groupingBy(Word::page));
        pages.values().forEach(words -> {
            for (int i = 0; i < words.size(); i++) {
                for (Word other : words.subList(i + 1, words.size())) {
                    assertThat(apart(words.get(i), other))
                            .as(words.get(i) + " over " + other)
                            .isTrue();
                }
            }
        });
    }

    private static boolean apart(Word word, Word other) {
        boolean beside = word.x() + word.width() <= other.x() + 0.1 || other.x() + other.width() <= word.x() + 0.1;
        return beside || Math.abs(word.y() - other.y()) > Math.min(word.size(), other.size()) * 0.3;
    }

    @Test
    void aPrimaryMemberSeesEightPartsASeniorAllOfThem() throws IOException {
        String primary = PdfWords.text(labelIt(Level.PRIMARY), 1);
        String senior = PdfWords.text(labelIt(Level.SENIOR), 1);
        assertThat(parts("figures/rabbit-side.svg", Level.PRIMARY)).hasSizeBetween(6, 8);
        parts("figures/rabbit-side.svg", Level.PRIMARY)
                .forEach(part -> assertThat(primary).contains(part.word()));
        parts("figures/rabbit-side.svg", Level.SENIOR)
                .forEach(part -> assertThat(senior).contains(part.word()));
        assertThat(senior).contains("stifle");
        assertThat(primary).doesNotContain("stifle");
    }

    @ParameterizedTest
    @EnumSource
    void oneFileIsShownWithWordsThenBlankThenWithItsKey(Level level) throws IOException {
        byte[] pdf = labelIt(level);
        List<Part> parts = parts("figures/rabbit-side.svg", level);
        String blank = PdfWords.text(pdf, 2);
        String bank = blank.substring(blank.indexOf("Words:"));
        String onTheFigure = blank.substring(0, blank.indexOf("Words:"));
        for (int i = 0; i < parts.size(); i++) {
            assertThat(bank.replaceAll("\\s+", " ")).contains(parts.get(i).word());
            assertThat(onTheFigure).containsPattern("\\b" + (i + 1) + "\\b");
        }
        parts.forEach(part -> assertThat(onTheFigure).doesNotContainPattern("\\b" + part.word() + "\\b"));
        String answers = answers(pdf);
        for (int i = 1; i <= parts.size(); i++) {
            assertThat(answers).containsPattern("(?m)\\b" + i + "\\s+[a-z]");
        }
    }

    private static String answers(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                String text = PdfWords.text(pdf, page);
                if (text.startsWith("Answers")) {
                    return text;
                }
            }
        }
        throw new AssertionError("no page of answers");
    }

    @ParameterizedTest
    @EnumSource
    void figuresToLabelAreTaggedForAReaderWhoCannotSee(Level level) {
        assertThat(PdfUa.violations(labelIt(level))).isEmpty();
    }

    @Test
    void noFigureIsARaster() throws IOException {
        for (byte[] pdf : List.of(
                labelIt(Level.SENIOR),
                RealTree.bytes(RealTree.guide(Level.PRIMARY, Paper.LETTER)),
                RealTree.bytes(RealTree.deck(Level.PRIMARY, Paper.LETTER)))) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                for (PDPage page : document.getPages()) {
                    for (COSName name : page.getResources().getXObjectNames()) {
                        assertThat(page.getResources().getXObject(name)).isNotInstanceOf(PDImageXObject.class);
                    }
                }
            }
        }
    }

    /** 28 teeth: 2 x (2/1 incisors, 3/2 premolars, 3/3 molars) (the dental formula of veterinary manuals; facts.md, S14, S16). */
    @Test
    void theFigureOfAllTeethHasThemByPosition() throws IOException {
        String svg = Files.readString(Path.of("content/figures/teeth-all.svg"));
        for (String side : List.of("left", "right")) {
            assertThat(ids(svg, "tooth-upper-" + side + "-incisor-\\d")).hasSize(2);
            assertThat(ids(svg, "tooth-upper-" + side + "-premolar-\\d")).hasSize(3);
            assertThat(ids(svg, "tooth-upper-" + side + "-molar-\\d")).hasSize(3);
            assertThat(ids(svg, "tooth-lower-" + side + "-incisor-\\d")).hasSize(1);
            assertThat(ids(svg, "tooth-lower-" + side + "-premolar-\\d")).hasSize(2);
            assertThat(ids(svg, "tooth-lower-" + side + "-molar-\\d")).hasSize(3);
        }
        assertThat(ids(svg, "tooth-[a-z]+-[a-z]+-[a-z]+-\\d")).hasSize(28);
    }

    /** Four toes and a dewclaw in front, four behind (facts.md, S81, S102). */
    @Test
    void theFeetHaveTheirToes() throws IOException {
        assertThat(ids(Files.readString(Path.of("content/figures/foot-front-below.svg")), "toe-\\d(?:-dewclaw)?"))
                .containsExactly("toe-1-dewclaw", "toe-2", "toe-3", "toe-4", "toe-5");
        assertThat(ids(Files.readString(Path.of("content/figures/foot-hind-below.svg")), "toe-\\d(?:-dewclaw)?"))
                .containsExactly("toe-2", "toe-3", "toe-4", "toe-5");
    }

    private static Set<String> ids(String svg, String pattern) {
        Set<String> ids = new TreeSet<>();
        Matcher id = Pattern.compile("<g id=\"(" + pattern + ")\"").matcher(svg);
        while (id.find()) {
            ids.add(id.group(1));
        }
        return ids;
    }
}
