package hutchleaf.page;

import hutchleaf.page.GuideView.PictureView.Labelled;
import java.util.List;

/**
 * What the template of the figures to label sees: each figure with its words, then blank; the answers stand at the back.
 *
 * @param word size of a part's name, in points
 */
record LabelItView(Look look, double word, List<Sheet> sheets) {
    /**
     * One figure.
     *
     * @param named the figure with its words
     * @param blank the figure with numbers, large enough to write beside
     * @param lineHeight from one writing line to the next, in millimetres
     * @param key the figure with numbers, small
     * @param answers words by number, from 1
     * @param bank the same words, A to Z
     */
    record Sheet(
            String anchor,
            String title,
            String alt,
            Labelled named,
            Numbered blank,
            double lineHeight,
            Numbered key,
            List<String> answers,
            List<String> bank) {}

    /**
     * A figure with a numbered disc for each part.
     *
     * @param radius of a disc, in millimetres
     */
    record Numbered(Labelled figure, double radius, List<Disc> discs) {}

    /** A disc's number and centre, in millimetres from the upper left corner of the box. */
    record Disc(int number, double x, double y) {}
}
