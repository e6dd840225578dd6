package hutchleaf.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The four levels of study, youngest first; each has one division and one guide. */
public enum Level {
    PRIMARY(1),
    JUNIOR(2),
    INTERMEDIATE(3),
    SENIOR(4);

    private final int blackToes;

    Level(int blackToes) {
        this.blackToes = blackToes;
    }

    /** As an author writes it: {@code primary}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As a page shows it: {@code Primary}. */
    public String title() {
        return name().charAt(0) + word().substring(1);
    }

    /** How many of the four toes of the level's mark are black: 1 to 4. */
    public int blackToes() {
        return blackToes;
    }

    public static Optional<Level> of(String word) {
        return Arrays.stream(values())
                .filter(level -> level.word().equals(word))
                .findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Level::word).toList();
    }
}
