package hutchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast by WCAG 2.2, 1.4.3 and 1.4.6, and the house's rule that default paper is black on white. */
final class ContrastTest {
    /** Contrast of text and ground (WCAG 2.2, 1.4.6, level AAA). */
    private static final double ENHANCED = 7;

    /** Properties and attributes that take a colour, with the value up to the end of its declaration. */
    private static final Pattern COLOURED = Pattern.compile(
            "(?<![\\w-])(color|background(?:-color)?|border(?:-(?:top|right|bottom|left))?(?:-color)?|outline|fill|stroke)"
                    + "(?:\\s*:\\s*((?:\\$\\{[^}]*}|[^;\"}])*)|=\"([^\"]*)\")");

    private static final Pattern STYLE = Pattern.compile("(?s)<style>.*?</style>|style=\"[^\"]*\"");
    private static final Set<String> BLACK_AND_WHITE = Set.of("black", "white", "none");

    /** Words of a declaration that are no colours. */
    private static final Pattern NO_COLOUR =
            Pattern.compile("solid|dashed|dotted|!important|[0-9.]+(?:pt|mm)?|\\$\\{[^}]*}(?:pt|mm)?");

    @ParameterizedTest
    @CsvSource({"#000000, 21.000", "#595959, 7.005", "#767676, 4.542", "#777777, 4.478"})
    void contrastOnWhiteIsTheRatioOfRelativeLuminances(String colour, double ratio) {
        assertThat(contrast(colour, "#ffffff")).isCloseTo(ratio, within(0.0005));
    }

    @Test
    void theTemplatesUseNoColourButBlackAndWhite() throws IOException {
        assertThat(contrast("#000000", "#ffffff")).isGreaterThan(ENHANCED);
        List<String> found = new ArrayList<>();
        try (Stream<Path> templates = Files.list(Path.of("templates"))) {
            for (Path template : templates.sorted().toList()) {
                coloured(template)
                        .flatMap(ContrastTest::values)
                        .filter(word -> !BLACK_AND_WHITE.contains(word))
                        .forEach(word -> found.add(template + ": " + word));
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void theTemplatesWriteNoColourByNumber() throws IOException {
        try (Stream<Path> templates = Files.list(Path.of("templates"))) {
            for (Path template : templates.sorted().toList()) {
                String text = Files.readString(template);
                assertThat(Pattern.compile("(?i)\\b(?:rgba?|hsla?|cmyk)\\(")
                                .matcher(text)
                                .results())
                        .as(template.toString())
                        .isEmpty();
            }
        }
    }

    /** Values of everything that takes a colour: in style sheets, style attributes and drawings. */
    private static Stream<String> coloured(Path template) throws IOException {
        String text = Files.readString(template);
        boolean sheet = template.getFileName().toString().endsWith("-style.ftl");
        String css = sheet
                ? text
                : String.join(
                        "\n",
                        STYLE.matcher(text).results().map(MatchResult::group).toList());
        Stream<String> declared = COLOURED.matcher(css)
                .results()
                .filter(match -> match.group(2) != null)
                .map(match -> match.group(2));
        Stream<String> drawn = COLOURED.matcher(text)
                .results()
                .filter(match -> match.group(3) != null)
                .map(match -> match.group(3));
        return Stream.concat(declared, drawn);
    }

    private static Stream<String> values(String declaration) {
        return Stream.of(declaration.replaceAll("\\$\\{[^}]*}", "0").strip().split("\\s+", -1))
                .filter(word -> !NO_COLOUR.matcher(word).matches());
    }

    private static double contrast(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
    }

    /** WCAG 2.2, relative luminance: sRGB to linear, with the threshold 0.04045. */
    private static double channel(String colour, int at) {
        double part = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
