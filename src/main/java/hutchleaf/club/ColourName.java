package hutchleaf.club;

import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One name of a colour.
 *
 * @param written as the table or its bracket gives it: {@code tortoise, black}
 * @param kind whether it is the row's own name
 * @param breeds those that alone use the row; empty where any may
 */
record ColourName(String written, Colour colour, Kind kind, Set<String> breeds) {
    enum Kind {
        OWN,
        SECOND
    }

    private static final String POINTED = "pointed white";
    private static final int MOST = 2;

    ColourName {
        breeds = Set.copyOf(breeds);
    }

    /**
     * The names of a row. {@code silver / silver fox} has two. A bracket at the end holds breeds ({@code golden (Palomino
     * breed)}), or second names ({@code chocolate agouti (cinnamon or amber)}), or an explanation, which does no harm as a
     * name.
     */
    static Stream<ColourName> of(Colour colour, List<Breed> breeds) {
        String name = colour.name();
        int bracket = name.endsWith(")") ? name.indexOf(" (") : -1;
        String outside = bracket < 0 ? name : name.substring(0, bracket);
        String inside = bracket < 0 ? "" : name.substring(bracket + 2, name.length() - 1);
        Set<String> tied = tied(inside, breeds);
        Stream<String> seconds =
                inside.isEmpty() || !tied.isEmpty() ? Stream.of() : Arrays.stream(inside.split(" or "));
        return Stream.of(
                        Stream.of(name, outside).map(written -> new ColourName(written, colour, Kind.OWN, tied)),
                        Arrays.stream(outside.split(" / ")).map(own -> new ColourName(own, colour, Kind.OWN, tied)),
                        seconds.map(second -> new ColourName(second, colour, Kind.SECOND, tied)))
                .flatMap(names -> names);
    }

    /** The breeds that a bracket names; each part has to be a word of a breed's name, capitals and all. */
    private static Set<String> tied(String inside, List<Breed> breeds) {
        Set<String> tied = new TreeSet<>();
        for (String part : inside.replaceFirst(" breed$", "").split(" and ")) {
            List<String> named = breeds.stream()
                    .map(Breed::name)
                    .filter(breed -> !part.isEmpty() && (" " + breed + " ").contains(" " + part + " "))
                    .toList();
            if (named.isEmpty()) {
                return Set.of();
            }
            tied.addAll(named);
        }
        return tied;
    }

    boolean isFor(Optional<Breed> breed) {
        return breeds.isEmpty()
                || breed.filter(named -> breeds.contains(named.name())).isPresent();
    }

    /**
     * As it is said aloud: {@code black tortoise} for {@code tortoise, black}, {@code pointed white with black points}.
     * Brackets are not said, and of two names of one row the first is: a Silver Fox is {@code silver}.
     */
    String said() {
        String name = written.replaceFirst(" \\(.*", "");
        if (kind == Kind.OWN) {
            name = colour.name().replaceFirst(" \\(.*", "").replaceFirst(" / .*", "");
        }
        String[] parts = name.split(", ", MOST);
        if (parts.length < MOST) {
            return name;
        }
        return parts[0].equals(POINTED) ? POINTED + " with " + parts[1] + " points" : parts[1] + " " + parts[0];
    }

    boolean matches(String typed) {
        return key(written).equals(key(typed)) || squeezed(written).equals(squeezed(typed));
    }

    /** Words without case, order, signs, and with British spelling. */
    static String key(String text) {
        return Arrays.stream(words(text)).sorted().collect(Collectors.joining(" "));
    }

    static String[] words(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replace("color", "colour")
                .replace("gray", "grey")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip()
                .split(" ");
    }

    private static String squeezed(String text) {
        return String.join("", words(text));
    }
}
