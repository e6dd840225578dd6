package hutchleaf.rabbit;

import hutchleaf.model.Level;
import java.util.Arrays;
import java.util.Optional;

/** The poses of the breed table: their name, and how a level tells them. Nothing is forced in any of them. */
enum Pose {
    HEAD_LOW(
            "posed, head low",
            "posed with its head low",
            "Its head stays low. I do not press it.",
            "Its front feet are under its eyes and its hind toes in line with the front of the hip. Its head is low,"
                    + " and I do not press it."),
    HEAD_UP(
            "posed, head up",
            "posed with its head up",
            "Its head stays up. I never push it down.",
            "Its front feet rest lightly and its head is up by itself. I never push it down."),
    HEAD_HALF_WAY(
            "posed, head half way up",
            "posed with its head half way up",
            "Its head is half way up. I do not press it.",
            "It carries its head half way up. I never press it down."),
    THEN_MOVES(
            "posed, then may move",
            "posed low, then free to move",
            "First its head is low. Then it may walk.",
            "Its forelegs lie flat, its front feet are under its eyes and its head is low. Then it may move, so that"
                    + " you see the rise."),
    ON_ITS_TOES(
            "posed up on its toes",
            "posed up on its toes",
            "It stands up on its toes. I do not lift it.",
            "It stands up on its front toes with straight forelegs. My hand only guides: it lifts no weight."),
    RUNNING(
            "running, natural",
            "walking freely along the table",
            "I let it walk. My hands stay near.",
            "It is a running breed. I take my hands off, keep them near, and let it walk."),
    STRETCHED(
            "stretched out",
            "stretched out, long and level",
            "It lies long and low. I never pull it.",
            "It lies stretched out, front feet forward and hind feet back, all on the table. I never pull a leg."),
    FRONT_RAISED(
            "posed, front raised",
            "posed with its front raised",
            "Its front is up. I do not lift it.",
            "Its back is flat and its front is raised on straight forelegs. I force nothing.");

    private final String written;
    private final String words;
    private final String primary;
    private final String older;

    Pose(String written, String words, String primary, String older) {
        this.written = written;
        this.words = words;
        this.primary = primary;
        this.older = older;
    }

    static Optional<Pose> of(String written) {
        return Arrays.stream(values())
                .filter(pose -> pose.written.equals(written))
                .findFirst();
    }

    /** As it is named: {@code posed with its head low}. */
    String words() {
        return words;
    }

    /** What is set, or left alone, in whole sentences. */
    String told(Level level) {
        return level == Level.PRIMARY ? primary : older;
    }
}
