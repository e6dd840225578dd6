package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Fact;
import hutchleaf.model.Inline;
import hutchleaf.model.SelfTestItem;
import hutchleaf.model.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words to XHTML: text escaped, links to what the edition holds, blanks filled or left as a line to write on. */
final class Markup implements Inline.Cases<String> {
    private static final String FACT = "fact.";

    /** A line may break where an element ends; what follows without a space goes inside, so that it stays with its word. */
    private static final Pattern CLINGING = Pattern.compile("(</(?:strong|em)>)([.,;:!?\u2019\u201D]+)");

    /** A link is followed by its page number, which what clings to the link comes after. */
    private static final Pattern LINK_END = Pattern.compile("data-after=\"\"([^>]*>[^<]*</a>)([.,;:!?]+)");

    private final Function<String, Optional<String>> anchorOf;
    private final Function<String, Optional<String>> filling;
    private final boolean strong;

    /**
     * Sets up a writer for one edition.
     *
     * @param anchorOf the element id of a topic by its path, when the edition holds it
     * @param filling what a blank prints, when it is known
     */
    Markup(Function<String, Optional<String>> anchorOf, Function<String, Optional<String>> filling) {
        this(anchorOf, filling, false);
    }

    private Markup(
            Function<String, Optional<String>> anchorOf, Function<String, Optional<String>> filling, boolean strong) {
        this.anchorOf = anchorOf;
        this.filling = filling;
        this.strong = strong;
    }

    /** A writer for paper of a member's own: what fills a blank stands out, nothing is a link. */
    static Markup own(Function<String, Optional<String>> filling) {
        return new Markup(path -> Optional.empty(), filling, true);
    }

    /** A writer for paper that stands alone: facts are filled in, nothing is a link. */
    static Markup unlinked(Edition edition) {
        return new Markup(
                path -> Optional.empty(),
                blank -> blank.startsWith(FACT)
                        ? Optional.ofNullable(edition.library().tables().facts().get(blank.substring(FACT.length())))
                                .map(Fact::printed)
                        : Optional.empty());
    }

    Xml write(Words words) {
        String clinging = CLINGING.matcher(join(words.runs())).replaceAll("$2$1");
        return new Xml(LINK_END.matcher(clinging).replaceAll("data-after=\"$2\"$1"));
    }

    List<Xml> writeAll(List<Words> lines) {
        return lines.stream().map(this::write).toList();
    }

    /** The words with their first sentence strong, as a caution is printed. */
    Xml firstSentenceStrong(Words words) {
        List<Inline> runs = words.runs();
        if (!runs.isEmpty() && runs.get(0) instanceof Inline.Text text) {
            int end = text.text().indexOf(". ");
            String first = end < 0 ? text.text() : text.text().substring(0, end + 1);
            return new Xml("<strong>" + Xml.escape(first) + "</strong>"
                    + Xml.escape(text.text().substring(first.length()))
                    + join(runs.subList(1, runs.size())));
        }
        return write(words);
    }

    /** A sentence with the gap that a reader fills drawn as a line. */
    Xml gap(Words words) {
        UnaryOperator<String> line = text -> text.replace(SelfTestItem.Gap.GAP, "<span class=\"gap\">\u00A0</span>");
        return new Xml(line.apply(join(words.runs())));
    }

    private String join(List<Inline> runs) {
        return runs.stream().map(run -> run.match(this)).collect(Collectors.joining());
    }

    @Override
    public String text(Inline.Text text) {
        return Xml.escape(text.text());
    }

    @Override
    public String strong(Inline.Strong strong) {
        return "<strong>" + join(strong.inside()) + "</strong>";
    }

    @Override
    public String emphasis(Inline.Emphasis emphasis) {
        return "<em>" + join(emphasis.inside()) + "</em>";
    }

    @Override
    public String link(Inline.Link link) {
        return anchorOf.apply(link.topic())
                .map(anchor ->
                        "<a class=\"see\" data-after=\"\" href=\"#" + anchor + "\">" + join(link.inside()) + "</a>")
                .orElseGet(() -> join(link.inside()));
    }

    @Override
    public String blank(Inline.Blank blank) {
        return filling.apply(blank.name())
                .map(Xml::escape)
                .map(words -> strong && !blank.name().startsWith(FACT) ? "<strong>" + words + "</strong>" : words)
                .orElseGet(() -> "<span class=\"blank\">(" + Xml.escape(label(blank.name())) + ")</span>");
    }

    /** What stands on the line to fill: {@code rabbit.eye colour} asks for the eye colour. */
    private static String label(String name) {
        return switch (name) {
            case "member.name", "member.first name" -> "your name";
            case "member.age" -> "your age";
            case "member.division" -> "your division";
            case "club.name" -> "your club";
            case "rabbit.name" -> "its name";
            default -> name.substring(name.indexOf('.') + 1);
        };
    }
}
