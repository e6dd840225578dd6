package hutchleaf.rabbit;

import static hutchleaf.rabbit.Comments.build;

import hutchleaf.rabbit.Comments.Build;
import java.util.List;
import java.util.Optional;

/** What is praised and what is looked for on a body, by body type. Consistent with {@code content/body-types}. */
final class BodyComments {
    private BodyComments() {}

    /** Back and hips. */
    static List<Build> junior(Optional<Shape> shape) {
        return shape.map(BodyComments::junior)
                .orElseGet(() -> List.of(
                        build("back", "its line fits the body type", "a dip or a flat spot"),
                        build("hips", "full and firm", "thin or narrow")));
    }

    private static List<Build> junior(Shape shape) {
        return switch (shape) {
            case COMPACT ->
                List.of(
                        build("back", "smooth and round", "flat or bumpy"),
                        build("hips", "round and full", "thin or pinched"));
            case COMMERCIAL ->
                List.of(
                        build("back", "a smooth, even curve", "a dip or a flat spot"),
                        build("hips", "full and firm", "thin or narrow"));
            case SEMI_ARCH ->
                List.of(
                        build("back", "rises behind the shoulder", "rises at the neck, or not at all"),
                        build("hips", "round down to the tail", "cut off at the end"));
            case FULL_ARCH ->
                List.of(
                        build("back", "one smooth curve from the nape", "a flat spot or a dip"),
                        build("hips", "smooth and round", "cut off or pinched"));
            case CYLINDRICAL ->
                List.of(
                        build("back", "flat and level", "a rise over the hips"),
                        build("hips", "as wide as the shoulders", "wider than the shoulders"));
        };
    }

    /** Shoulders, back and hindquarters. */
    static List<Build> older(Optional<Shape> shape) {
        return shape.map(BodyComments::older)
                .orElseGet(() -> List.of(
                        build("shoulders", "in balance with the hips", "too narrow for the hips"),
                        build("back", "its topline fits the body type", "a dip or a flat spot"),
                        build("hindquarters", "full and firm", "narrow, pinched or undercut")));
    }

    private static List<Build> older(Shape shape) {
        return switch (shape) {
            case COMPACT ->
                List.of(
                        build("shoulders", "nearly as wide as the hips", "narrow, a wedge from above"),
                        build(
                                "back",
                                "one round curve, highest over the hips",
                                "a flat spot, or its top too far forward"),
                        build("hindquarters", "round and full down to the table", "pinched or undercut"));
            case COMMERCIAL ->
                List.of(
                        build("shoulders", "only a little narrower than the hips", "narrow, a strong wedge"),
                        build("back", "an even curve, highest over the hips", "a dip, or flat over the loin"),
                        build("hindquarters", "full, firm and smooth", "narrow, rough or undercut"));
            case SEMI_ARCH ->
                List.of(
                        build("shoulders", "low, in line with the neck", "high, so that the rise begins too early"),
                        build("back", "rises from behind the shoulder", "rises from the nape, or stays flat"),
                        build("hindquarters", "rounded to the tail", "cut off or pinched"));
            case FULL_ARCH ->
                List.of(
                        build("shoulders", "carry the arch on from the nape", "a dip behind them"),
                        build("back", "one unbroken arch from nape to tail", "a flat spot that breaks the curve"),
                        build(
                                "hindquarters",
                                "smooth and rounded, with daylight under the belly",
                                "chopped off or pinched"));
            case CYLINDRICAL ->
                List.of(
                        build("shoulders", "as wide as the hips", "narrower than the hips"),
                        build("back", "level from shoulder to hip", "a rise over the loin or the hips"),
                        build("hindquarters", "of one width with the shoulders", "wider than the shoulders"));
        };
    }
}
