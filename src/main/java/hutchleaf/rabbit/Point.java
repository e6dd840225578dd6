package hutchleaf.rabbit;

import java.util.Locale;

/** What a judge may want to find or hear about a rabbit, in the order of the routine. */
public enum Point {
    BODY_TYPE(2, "Body type", "rabbit.body type"),
    POSE(2, "Pose", "rabbit.pose"),
    BREED(3, "Breed", "rabbit.breed"),
    VARIETY(3, "Variety", "rabbit.variety"),
    SEX(3, "Buck or doe", "rabbit.sex"),
    AGE(3, "Age on show day", "rabbit.age"),
    SHOW_CLASS(3, "Show class", "rabbit.class"),
    WEIGHT(3, "Weight", "rabbit.weight"),
    WEIGHT_CLASS(3, "Breed class weight", "rabbit.weight class"),
    EARS(4, "Ear carriage", "rabbit.ear carriage"),
    EAR_NUMBER(4, "Ear number", "rabbit.ear number"),
    EYE(6, "Eye colour", "rabbit.eye colour"),
    NAILS(9, "Nail colour", "rabbit.nail colour"),
    SEX_CHECK(12, "Sex check", "rabbit.sex check"),
    FUR(15, "Fur type", "rabbit.fur type"),
    FUR_TEST(15, "What the fur does", "rabbit.fur test"),
    COLOUR_GROUP(15, "Colour group", "rabbit.colour group"),
    JUDGES_LOOK_FOR(16, "What judges look for", "rabbit.judges look for");

    private final int stop;
    private final String label;
    private final String blank;

    Point(int stop, String label, String blank) {
        this.stop = stop;
        this.label = label;
        this.blank = blank;
    }

    /** The stop of the routine at which it is found or said, 1 to 16. */
    public int stop() {
        return stop;
    }

    /** As it is printed: {@code Eye colour}. */
    public String label() {
        return label;
    }

    /** The blank that it fills; not every point has one that authors may write. */
    public String blank() {
        return blank;
    }

    /** As it stands in a sentence: {@code eye colour}. */
    String ask() {
        return label.toLowerCase(Locale.ROOT);
    }
}
