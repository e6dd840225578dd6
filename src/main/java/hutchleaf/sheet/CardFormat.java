package hutchleaf.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The sizes of a card, as it is held to be read. Own sizes, but for the index card. */
public enum CardFormat {
    /** 60 by 40 mm, to carry in a pocket; no name of the topic. */
    SMALL(60, 40),
    /** 66 by 60 mm. */
    STANDARD(66, 60),
    /** 66 by 90 mm, for large type and pictures. */
    PRIMARY(66, 90),
    /** 127 by 76.2 mm: 5 by 3 inches, by definition of the inch. */
    INDEX(127, 76.2),
    /** 132 by 90 mm, nothing on it under 18 pt. */
    LARGE_PRINT(132, 90);

    private final Length width;
    private final Length height;

    CardFormat(double widthMm, double heightMm) {
        this.width = Length.mm(widthMm);
        this.height = Length.mm(heightMm);
    }

    public Length width() {
        return width;
    }

    public Length height() {
        return height;
    }

    /** As it is asked for: {@code large-print}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<CardFormat> of(String word) {
        return Arrays.stream(values())
                .filter(format -> format.word().equals(word))
                .findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(CardFormat::word).toList();
    }
}
