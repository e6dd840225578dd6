package hutchleaf.page;

import hutchleaf.sheet.CardFormat;
import java.util.List;

/**
 * Where things stand on a face of a card, in millimetres from its own corner, and how large its type is, in points. Own
 * measures; a format's smallest type is the last of its text's sizes.
 *
 * @param inset what stays clear at the left and right
 * @param width between the two
 * @param foot absent on a small card, whose head says which side it is
 */
record CardFace(double inset, double width, Head head, Text text, Over over, Beside beside, Foot foot) {
    /**
     * The upper edge: code, topic, toe mark and the rule below them.
     *
     * @param topicLeft where the topic starts after a code of up to five signs
     * @param longLeft where it starts after a longer one
     * @param topics whether the topic's name stands there; else which side it is
     * @param half half of the mark's width
     */
    record Head(
            double code,
            double codeTop,
            double topic,
            double topicTop,
            double topicLeft,
            double topicWidth,
            double longLeft,
            double longWidth,
            boolean topics,
            double half,
            double markTop,
            double rule) {}

    /**
     * Question or answer.
     *
     * @param sizes classes from the largest to the smallest that is allowed
     */
    record Text(double top, double height, List<String> sizes) {
        String smallest() {
            return sizes.get(sizes.size() - 1);
        }
    }

    /**
     * A picture above the question.
     *
     * @param height of the picture at most
     * @param words where the words start; 0 puts them right under the picture
     */
    record Over(double top, double width, double height, double words, double wordsHeight) {}

    /**
     * A picture at the left of the question.
     *
     * @param broadest ratio of width to height; broader figures stand above the words
     */
    record Beside(
            double broadest,
            double left,
            double top,
            double width,
            double height,
            double wordsLeft,
            double wordsWidth) {}

    /**
     * The lower edge.
     *
     * @param size 0 for none
     * @param mid where its middle part starts
     * @param line where the line for initials starts
     */
    record Foot(double top, double size, double mid, double line, double lineWidth) {}

    private static final double ANY = 100;

    static CardFace of(CardFormat format) {
        return switch (format) {
            case SMALL ->
                new CardFace(
                        4,
                        52,
                        new Head(10, 3.6, 10, 3.6, 15.5, 30, 17.5, 28, false, 4.4, 3.3, 8.2),
                        new Text(9, 27, List.of("s16", "s14", "s125", "s11", "s10")),
                        new Over(9.2, 50, 14, 0, 0),
                        new Beside(1.9, 4, 9.4, 27, 26.2, 32, 24),
                        new Foot(0, 0, 0, 0, 0));
            case STANDARD ->
                new CardFace(
                        4,
                        58,
                        new Head(14, 3.6, 10, 4.6, 18, 30.3, 21.5, 26.8, true, 6.4, 3.4, 11.6),
                        new Text(12.5, 39, List.of("s18", "s16", "s14", "s125", "s11", "s10")),
                        new Over(12.8, 52, 26.8, 0, 0),
                        new Beside(1.2, 4, 12.6, 28, 38, 33, 29),
                        new Foot(52.2, 10, 14.4, 25.3, 8));
            case PRIMARY ->
                new CardFace(
                        4,
                        58,
                        new Head(14, 3.6, 10, 4.6, 18, 30.3, 21.5, 26.8, true, 6.4, 3.4, 11.6),
                        new Text(14, 64, List.of("s18", "s17", "s16", "s15", "s14")),
                        new Over(14, 52, 42, 57.5, 23),
                        new Beside(0, 4, 14, 28, 64, 33, 29),
                        new Foot(81.6, 11, 15.8, 27.5, 7));
            case INDEX ->
                new CardFace(
                        5,
                        117,
                        new Head(16, 4.2, 13, 5, 22, 80, 26.5, 75, true, 8, 3.9, 12.6),
                        new Text(14, 51, List.of("s24", "s22", "s20", "s18", "s16", "s14", "s12")),
                        new Over(14, 100, 30, 0, 0),
                        new Beside(ANY, 5, 14.4, 56, 50, 64, 58),
                        new Foot(67.4, 12, 24, 38, 14));
            case LARGE_PRINT ->
                new CardFace(
                        5,
                        122,
                        new Head(24, 4, 18, 5.8, 30, 75, 36, 69, true, 9.5, 4, 15),
                        new Text(16.6, 59, List.of("s28", "s26", "s24", "s22", "s20", "s18")),
                        new Over(16.6, 100, 34, 0, 0),
                        new Beside(ANY, 5, 17, 58, 58, 66, 61),
                        new Foot(78, 18, 32, 54, 14));
        };
    }

    /** Whether a figure's words stand at its right. */
    boolean beside(double ratio) {
        return ratio <= beside.broadest;
    }

    /** The room for a figure of a ratio. */
    CardFigure.Room room(double ratio) {
        return beside(ratio)
                ? new CardFigure.Room(beside.width, beside.height)
                : new CardFigure.Room(over.width, over.height);
    }
}
