package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The comments a member builds for the last stop, from head to tail: the part, a grade, a reason that fits its breed. */
public final class Comments {
    /** The grades of a comment, best first; a member draws a ring round one. */
    public static final List<String> GRADES = List.of("excellent", "good", "fair", "poor");

    /** One comment: a sentence to tick, or one to build. */
    public sealed interface Comment {}

    /** A whole sentence that a primary member ticks when it is true: {@code I like its fur, because it is clean.} */
    public record Tick(String sentence) implements Comment {}

    /**
     * A comment to build from a part, a grade and a reason.
     *
     * @param part as it is named aloud: {@code hindquarters}
     * @param praise what earns a high grade on this rabbit's body or fur type
     * @param lookFor what lowers it
     * @param start the sentence to finish: {@code The hindquarters are …, because …}
     */
    public record Build(String part, String praise, String lookFor, String start) implements Comment {}

    private Comments() {}

    /** Two sentences to tick for primary, three comments to build for junior, five for the older levels. */
    public static List<Comment> of(Findings findings, Level level) {
        Optional<Shape> shape = findings.rabbit().flatMap(Rabbit::breed).flatMap(BreedPoints::shape);
        Optional<Fur> fur = findings.rabbit().flatMap(Rabbit::breed).flatMap(BreedPoints::fur);
        return switch (level) {
            case PRIMARY ->
                List.of(
                        new Tick(shape.map(found -> "I like its shape, because " + found.seen(level) + ".")
                                .orElse("I like its back, because it is smooth.")),
                        new Tick("I like its fur, because it is clean and smooth."));
            case JUNIOR -> {
                List<Comment> three = new ArrayList<>(BodyComments.junior(shape));
                three.add(FurComments.junior(fur));
                yield List.copyOf(three);
            }
            case INTERMEDIATE, SENIOR -> {
                List<Comment> five = new ArrayList<>();
                five.add(head(findings));
                five.addAll(BodyComments.older(shape));
                five.add(FurComments.older(fur));
                yield List.copyOf(five);
            }
        };
    }

    private static Build head(Findings findings) {
        String ears = findings.words(Point.EARS)
                .map(carriage ->
                        carriage.equals("lop") ? "the ears hang close to the cheeks" : "the ears stand up alike")
                .orElse("the ears are carried alike");
        return build(
                "head and ears",
                "the head fits the body, and " + ears,
                "a head too small or too large, ears carried wrongly");
    }

    static Build build(String part, String praise, String lookFor) {
        String verb = part.endsWith("s") ? " are …, because …" : " is …, because …";
        return new Build(part, praise, lookFor, "The " + part + verb);
    }
}
