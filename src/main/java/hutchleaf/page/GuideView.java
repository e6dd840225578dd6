package hutchleaf.page;

import java.util.List;
import java.util.Optional;

/** What the template of a study guide sees. Every text in it is finished XHTML or plain words. */
record GuideView(
        Look look,
        List<PictureView.Size> sizes,
        Cover cover,
        List<Chapter> chapters,
        List<StopView> stops,
        List<TopicView> topics,
        Back back) {
    /**
     * What the cover and the first pages say.
     *
     * @param belongsTo whom the guide is for by age or grade
     * @param routine the whole routine, a row a stop
     * @param safety the topic that every guide starts with
     */
    record Cover(
            String club, String belongsTo, List<RoutineRow> routine, Optional<TopicView> safety, List<Mark> marks) {}

    /** A level's mark and name, for the page that explains the marks. */
    record Mark(int toes, String level) {}

    /**
     * A row of the routine on one page.
     *
     * @param told true when the level does not show the stop but tells it
     */
    record RoutineRow(
            int no, String name, String doing, String saying, boolean back, boolean first, int band, boolean told) {}

    /** A group of the contents. */
    record Chapter(String title, List<Entry> entries, boolean stops) {}

    /** A line of the contents; its page is found by its anchor. */
    record Entry(String anchor, String title, int no) {}

    /** A stop: its left page is for the hands, its right page for the voice. */
    record StopView(
            int no,
            String anchor,
            String name,
            List<Hop> hops,
            Xml lead,
            List<PictureView> pictures,
            List<Xml> steps,
            List<SectionView> more,
            Xml caution,
            Spoken spoken,
            Optional<Scored> scored,
            String place) {}

    /** A stop on the hop line: done, here or to come. */
    record Hop(int no, boolean done, boolean here) {}

    /** The right page of a stop. */
    record Spoken(
            Optional<TableView> lookFor,
            boolean starred,
            Xml sayIt,
            Optional<Xml> ifFound,
            Optional<Xml> oftenMissed,
            List<Xml> asked) {}

    /** How the stop is scored. */
    record Scored(String letter, String with, String lookingFor, int hands, int voice) {}

    /**
     * A drawing.
     *
     * @param width of its frame, in millimetres
     * @param labelled its parts with their words, where they are named
     */
    record PictureView(String file, String alt, String caption, double width, Size size, Optional<Labelled> labelled) {
        /**
         * How high it stands, in millimetres.
         *
         * @param most where there is room
         * @param floor where a page is set tightly: its lines would be too thin below
         */
        record Size(int most, int floor) implements Comparable<Size> {
            @Override
            public int compareTo(Size other) {
                return most == other.most ? Integer.compare(floor, other.floor) : Integer.compare(most, other.most);
            }
        }

        /** A figure in a box with words on both sides; all in millimetres from the upper left corner of the box. */
        record Labelled(
                String file,
                double boxWidth,
                double boxHeight,
                double left,
                double top,
                double width,
                double height,
                List<Named> named) {}

        /**
         * A word and its line.
         *
         * @param onLeft whether the word ends where its line starts, or starts there
         */
        record Named(String word, boolean onLeft, double portX, double portY, double endX, double endY) {}
    }

    /** A topic outside the routine. */
    record TopicView(
            String anchor,
            String title,
            String label,
            boolean firstOfSubject,
            Optional<Xml> lead,
            List<SectionView> sections,
            List<WordView> words,
            List<Xml> asked,
            String place) {}

    /**
     * A section with its heading in the rail.
     *
     * @param kind {@code prose}, {@code pictures} or {@code caution}
     * @param railLines about how many lines the heading takes in the rail
     * @param breaks whether it is too long to be kept on one page
     */
    record SectionView(
            String kind,
            String heading,
            int railLines,
            boolean breaks,
            List<BlockView> blocks,
            Optional<Xml> caution) {}

    /**
     * A block of prose: one of its parts is there, by kind.
     *
     * @param kind {@code paragraph}, {@code bullets}, {@code numbered}, {@code table} or {@code picture}
     */
    record BlockView(
            String kind,
            Optional<Xml> text,
            List<Xml> items,
            Optional<TableView> table,
            Optional<PictureView> picture) {}

    /**
     * A table.
     *
     * @param wide whether it takes the whole width of the page
     * @param strong index of the column that holds the word to learn, from 0
     */
    record TableView(List<Xml> head, List<List<Xml>> rows, boolean wide, int strong) {}

    /** A word to know. */
    record WordView(String term, int lines, Xml meaning) {}

    /** The pages at the back. */
    record Back(List<AskedGroup> asked, TestView test, List<WordView> words, List<SourceView> sources) {}

    /** Questions of one topic with the points their answers must hold. */
    record AskedGroup(String title, String anchor, List<Asked> questions) {}

    /** A question and its points. */
    record Asked(Xml question, String need, List<Xml> points) {}

    /** The self-test and its key. */
    record TestView(List<Tick> ticks, List<GapItem> gaps, List<AloudItem> aloud, List<KeyRow> key, int points) {}

    /** A question with choices. */
    record Tick(int no, Xml question, List<Xml> choices) {}

    /** A sentence to finish. */
    record GapItem(int no, Xml question) {}

    /** Something to say aloud. */
    record AloudItem(int no, Xml question, List<Xml> points) {}

    /** A row of the key. */
    record KeyRow(int no, Xml answer, Xml why, String anchor) {}

    /** A source in words. */
    record SourceView(String text) {}
}
