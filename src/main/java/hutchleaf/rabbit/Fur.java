package hutchleaf.rabbit;

import hutchleaf.model.Level;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The six fur types: what each does under the hand. Consistent with {@code content/fur-types}. */
enum Fur {
    FLYBACK("it snaps back at once", "it snaps back at once", "it snaps back at once"),
    ROLLBACK("it drifts back slowly", "it drifts back slowly", "it drifts back slowly and softly"),
    STANDING(
            "it stays up", "it stays up until I stroke it back", "it stays up until I stroke it back towards the tail"),
    REX(
            "it feels like velvet",
            "it springs upright and feels like velvet",
            "it springs upright, plush and even, whichever way I stroke it"),
    SATIN(
            "it shines like glass",
            "it rolls back and shines like glass",
            "it rolls back, fine and silky, with a glassy sheen"),
    WOOL(
            "it is long and soft",
            "it is long and soft, and does not lie flat",
            "it does not lie flat, and it is long and soft");

    /** Breeds of which more is said than the type. Sources: lionhead-ref, afl-guide and angora-four of sources.md. */
    private static final Map<String, String> SECOND_COAT = Map.of(
            "Lionhead", "with a mane of wool",
            "American Fuzzy Lop", "with normal fur on head, ears and feet",
            "French Angora", "with normal fur on face, ears and front feet",
            "Satin Angora", "with a shine like glass");

    private final String primary;
    private final String junior;
    private final String older;

    Fur(String primary, String junior, String older) {
        this.primary = primary;
        this.junior = junior;
        this.older = older;
    }

    static Optional<Fur> of(String written) {
        return Arrays.stream(values()).filter(fur -> fur.word().equals(written)).findFirst();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As it is named on a breed: {@code rollback, with a mane of wool}; primary names the type alone. */
    String on(String breed, Level level) {
        return Optional.ofNullable(SECOND_COAT.get(breed))
                .filter(second -> level != Level.PRIMARY)
                .map(second -> word() + ", " + second)
                .orElseGet(this::word);
    }

    /** What a member does to show it, and what is seen. Wool is not stroked up: it is parted. */
    String shown(Level level) {
        if (this == WOOL) {
            return level == Level.PRIMARY
                    ? "I part it gently: " + does(level) + "."
                    : "I part it gently and do not rub it: " + does(level) + ".";
        }
        return (level == Level.PRIMARY ? "I stroke it up, and " : "I stroke it towards the head, and ") + does(level)
                + ".";
    }

    /** What it does when it is stroked towards the head, or, as wool, when it is parted; a clause. */
    String does(Level level) {
        return switch (level) {
            case PRIMARY -> primary;
            case JUNIOR -> junior;
            case INTERMEDIATE, SENIOR -> older;
        };
    }
}
