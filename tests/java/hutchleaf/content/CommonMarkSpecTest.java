package hutchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.commonmark.ext.footnotes.FootnotesExtension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.testutil.TestResources;
import org.commonmark.testutil.example.Example;
import org.commonmark.testutil.example.ExampleReader;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Our parser against the specification: CommonMark 0.31.2, 652 examples.
 *
 * <p>No exception is listed: with tables and footnotes switched on, all of them still come out as the specification
 * prints them.
 */
class CommonMarkSpecTest {
    private static final List<Example> EXAMPLES = ExampleReader.readExamples(TestResources.getSpec());

    private static final HtmlRenderer HTML = HtmlRenderer.builder()
            .extensions(List.of(TablesExtension.create(), FootnotesExtension.create()))
            .percentEncodeUrls(true)
            .build();

    @Test
    void theSpecificationHasAllItsExamples() {
        assertThat(EXAMPLES).hasSize(652);
    }

    @TestFactory
    Stream<DynamicTest> everyExampleOfTheSpecification() {
        return IntStream.range(0, EXAMPLES.size()).mapToObj(index -> {
            Example example = EXAMPLES.get(index);
            return DynamicTest.dynamicTest(
                    "example " + (index + 1) + ", " + example.getSection(),
                    () -> assertThat(HTML.render(Markdown.parser().parse(tabs(example.getSource()))))
                            .as("from:\n%s", example.getSource())
                            .isEqualTo(tabs(example.getHtml())));
        });
    }

    /** The specification prints a TAB as an arrow. */
    private static String tabs(String text) {
        return text.replace('\u2192', '\t');
    }
}
