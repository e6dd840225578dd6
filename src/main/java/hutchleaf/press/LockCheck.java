package hutchleaf.press;

import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Refuses whatever in a page could reach the disk or the network, or run. A page may refer to two things only: a
 * figure ({@code hutch:figures/…} on an img) and a place within itself ({@code #id} on a link or bookmark).
 */
final class LockCheck {
    private static final Set<String> REFUSED_ELEMENTS = Set.of(
            "script",
            "iframe",
            "frame",
            "frameset",
            "object",
            "embed",
            "applet",
            "base",
            "link",
            "audio",
            "video",
            "form");

    private static final Set<String> ADDRESS_ATTRIBUTES = Set.of(
            "src",
            "href",
            "data",
            "action",
            "formaction",
            "background",
            "cite",
            "longdesc",
            "poster",
            "srcset",
            "codebase",
            "classid",
            "archive",
            "profile",
            "manifest",
            "usemap",
            "ping",
            "download");

    private static final Pattern FIGURE = Pattern.compile("hutch:(figures/[A-Za-z0-9_./-]+\\.svg)");

    /** A CSS escape: a backslash, then up to six hex digits and one blank, or any one sign (CSS 2.1, 4.1.3). */
    private static final Pattern CSS_ESCAPE = Pattern.compile("\\\\(?:([0-9a-fA-F]{1,6})\\s?|(.))");

    private static final Pattern CSS_REACH = Pattern.compile(
            "(url|src|image|image-set)\\s*\\(\\s*[\"']?([^\"')]*)|@import\\s*[\"']?([^\"';]*)|@font-face",
            Pattern.CASE_INSENSITIVE);

    private final Place fallback;
    private final Problems problems;
    private final Set<String> ids;

    private LockCheck(Document document, Place fallback, Problems problems) {
        this.fallback = fallback;
        this.problems = problems;
        this.ids = Dom.elements(document, element -> element.hasAttribute("id")).stream()
                .map(element -> element.getAttribute("id"))
                .collect(Collectors.toUnmodifiableSet());
    }

    static void check(Document document, Place fallback, Problems problems) {
        LockCheck check = new LockCheck(document, fallback, problems);
        Dom.walk(document, node -> {
            if (node instanceof Element element) {
                check.element(element);
            }
        });
    }

    /** The path that a figure's address names, when it is written as one and stays inside the content tree. */
    static Optional<String> figurePath(String address) {
        Matcher matcher = FIGURE.matcher(address);
        return matcher.matches() && !address.contains("..") && !address.contains("//")
                ? Optional.of(matcher.group(1))
                : Optional.empty();
    }

    private void element(Element element) {
        String name = Dom.name(element).toLowerCase(Locale.ROOT);
        if (REFUSED_ELEMENTS.contains(name)) {
            String addresses = Dom.attributes(element).stream()
                    .filter(attribute -> ADDRESS_ATTRIBUTES.contains(attribute.getName()))
                    .map(attribute -> " '" + attribute.getValue() + "'")
                    .collect(Collectors.joining());
            add(element, "<" + name + ">" + addresses + " has no place on a printed page", "leave it out");
            return;
        }
        if (name.equals("style")) {
            css(element, element.getTextContent());
        }
        if (Dom.isInsideInline(element)) {
            drawing(element);
        } else {
            Dom.attributes(element).forEach(attribute -> attribute(element, name, attribute));
        }
    }

    private void drawing(Element element) {
        SvgRules.element(Dom.name(element)).ifPresent(fault -> add(element, fault.what(), fault.mend()));
        for (Attr attribute : Dom.attributes(element)) {
            SvgRules.attribute(attribute.getName(), attribute.getValue())
                    .ifPresent(fault -> add(element, fault.what(), fault.mend()));
        }
    }

    private void attribute(Element element, String elementName, Attr attribute) {
        String name = attribute.getName().toLowerCase(Locale.ROOT);
        String value = attribute.getValue();
        if (name.startsWith("on")) {
            add(element, "the event '" + attribute.getName() + "' has no place on a printed page", "leave it out");
        } else if (name.equals("style")) {
            css(element, value);
        } else if (name.equals("src") && elementName.equals("img")) {
            figure(element, value);
        } else if (name.equals("href") && (elementName.equals("a") || elementName.equals("bookmark"))) {
            link(element, value);
        } else if (ADDRESS_ATTRIBUTES.contains(name) || name.endsWith(":href")) {
            add(element, "'" + value + "' is fetched by nobody here", "take '" + name + "' off <" + elementName + ">");
        }
    }

    private void figure(Element element, String address) {
        if (figurePath(address).isEmpty()) {
            add(element, "'" + address + "' is not a figure", "write hutch:figures/NAME.svg");
        } else if (!element.hasAttribute("alt")) {
            add(element, "'" + address + "' has no alt text", "say what it shows, or write alt=\"\" for decoration");
        }
    }

    private void link(Element element, String address) {
        if (!address.startsWith("#")) {
            add(element, "the link '" + address + "' leaves the document", "link to #id, or write it out as text");
        } else if (!ids.contains(address.substring(1))) {
            add(element, "the link '" + address + "' leads nowhere", "give its target that id");
        }
    }

    /** Looks at the text both as written and with its escapes undone, since {@code \75rl(} is url( too. */
    private void css(Element element, String css) {
        Matcher reach = CSS_REACH.matcher(css + "\n" + unescape(css));
        if (reach.find()) {
            String address = Optional.ofNullable(reach.group(2))
                    .or(() -> Optional.ofNullable(reach.group(3)))
                    .orElse(reach.group());
            add(element, "the style reaches for '" + address.strip() + "'", "draw figures with <img> and load nothing");
        }
    }

    private static String unescape(String css) {
        return CSS_ESCAPE.matcher(css).replaceAll(match -> {
            String hex = match.group(1);
            int code = hex == null ? match.group(2).codePointAt(0) : Integer.parseInt(hex, 16);
            return Matcher.quoteReplacement(Character.isValidCodePoint(code) ? Character.toString(code) : "");
        });
    }

    private void add(Element element, String what, String mend) {
        problems.add(Dom.place(element, fallback), what, mend);
    }
}
