package hutchleaf.press;

import hutchleaf.problem.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** The few walks over a parsed page that the press needs. */
final class Dom {
    private Dom() {}

    /** Every node from here down, in document order. */
    static void walk(Node node, Consumer<Node> visit) {
        visit.accept(node);
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            walk(child, visit);
        }
    }

    /** The elements from here down that meet a condition, in document order. */
    static List<Element> elements(Node node, Predicate<Element> wanted) {
        List<Element> found = new ArrayList<>();
        walk(node, each -> {
            if (each instanceof Element element && wanted.test(element)) {
                found.add(element);
            }
        });
        return found;
    }

    static List<Attr> attributes(Element element) {
        NamedNodeMap map = element.getAttributes();
        List<Attr> list = new ArrayList<>(map.getLength());
        for (int i = 0; i < map.getLength(); i++) {
            list.add((Attr) map.item(i));
        }
        return list;
    }

    /** The element's name without a prefix. */
    static String name(Element element) {
        return Optional.ofNullable(element.getLocalName()).orElseGet(element::getTagName);
    }

    /** Where an author should look: the nearest {@code data-place} at or above a node, else the fallback. */
    static Place place(@Nullable Node node, Place fallback) {
        for (Node at = node; at != null; at = at.getParentNode()) {
            if (at instanceof Element element && element.hasAttribute("data-place")) {
                return parsePlace(element.getAttribute("data-place"));
            }
        }
        return fallback;
    }

    private static Place parsePlace(String text) {
        int colon = text.lastIndexOf(':');
        String line = text.substring(colon + 1);
        if (colon > 0 && !line.isEmpty() && line.length() < 9 && line.chars().allMatch(c -> c >= '0' && c <= '9')) {
            return new Place(text.substring(0, colon), Integer.parseInt(line));
        }
        return Place.whole(text);
    }

    static boolean hasClass(Element element, String name) {
        return classes(element).anyMatch(name::equals);
    }

    static void addClass(Element element, String name) {
        element.setAttribute(
                "class", Stream.concat(classes(element), Stream.of(name)).collect(Collectors.joining(" ")));
    }

    static void removeClass(Element element, String name) {
        element.setAttribute(
                "class", classes(element).filter(other -> !other.equals(name)).collect(Collectors.joining(" ")));
    }

    private static Stream<String> classes(Element element) {
        return Arrays.stream(element.getAttribute("class").split("\\s+", -1)).filter(name -> !name.isEmpty());
    }

    /** The element just before this one, whatever text stands between. */
    static Optional<Element> before(Element element) {
        for (Node at = element.getPreviousSibling(); at != null; at = at.getPreviousSibling()) {
            if (at instanceof Element found) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** Whether this is a drawing written into the page. */
    static boolean isInline(Element element) {
        return name(element).equals("svg");
    }

    /** Whether this is such a drawing or part of one. */
    static boolean isInsideInline(Element element) {
        for (Node at = element; at instanceof Element up; at = up.getParentNode()) {
            if (isInline(up)) {
                return true;
            }
        }
        return false;
    }
}
