package hutchleaf.content;

import java.util.List;
import org.commonmark.ext.footnotes.FootnotesExtension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** The Markdown that authors write: CommonMark with tables; footnotes are parsed so that they can be refused by name. */
final class Markdown {
    private static final Parser PARSER = Parser.builder()
            .extensions(List.of(TablesExtension.create(), FootnotesExtension.create()))
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .build();

    private Markdown() {}

    /** The one parser, safe between threads. */
    static Parser parser() {
        return PARSER;
    }
}
