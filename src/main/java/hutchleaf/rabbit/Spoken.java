package hutchleaf.rabbit;

import hutchleaf.model.Rabbit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns names as tables write them into words as they are said. */
final class Spoken {
    private static final Pattern BRACKETS = Pattern.compile("\\s*\\([^)]*\\)");
    private static final Pattern SECOND_NAME = Pattern.compile("\\s*/.*$");
    private static final Pattern TURNED = Pattern.compile("(?<broken>broken )?(?<kind>[^,]+), (?<shade>[^,]+)");
    private static final String POINTED = "pointed white";

    private Spoken() {}

    /** {@code broken tortoise, black} is said "broken black tortoise". */
    static String variety(String written) {
        String name = SECOND_NAME
                .matcher(BRACKETS.matcher(written).replaceAll(""))
                .replaceAll("")
                .strip();
        Matcher turned = TURNED.matcher(name);
        if (!turned.matches()) {
            return name;
        }
        String broken = turned.group("broken") == null ? "" : "broken ";
        String kind = turned.group("kind");
        String shade = turned.group("shade");
        return kind.equals(POINTED) ? POINTED + " with " + shade + " points" : broken + shade + " " + kind;
    }

    /** {@code a Dutch}, {@code an American}; a rabbit of mixed breed is {@code a mixed breed}. */
    static String breed(Rabbit rabbit) {
        return article(rabbit.breedName());
    }

    static String article(String noun) {
        return ("AEIOUaeiou".indexOf(noun.charAt(0)) < 0 ? "a " : "an ") + noun;
    }

    /** With a capital and a full stop. */
    static String sentence(String words) {
        String end = words.endsWith(".") ? "" : ".";
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + end;
    }
}
