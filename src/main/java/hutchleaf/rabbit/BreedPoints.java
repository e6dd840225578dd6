package hutchleaf.rabbit;

import hutchleaf.model.Breed;
import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.rabbit.Answer.Check;
import hutchleaf.rabbit.Answer.Known;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** The points that a breed's row answers, its columns used only where they are sure. */
final class BreedPoints {
    static final String TABLE = "breed table";
    static final String NOT_SURE = "our breed table is not sure";
    static final String MIXED = "a mixed breed: look at your rabbit";

    private final Rabbit rabbit;
    private final LocalDate show;
    private final Level level;

    BreedPoints(Rabbit rabbit, LocalDate show, Level level) {
        this.rabbit = rabbit;
        this.show = show;
        this.level = level;
    }

    void addTo(Map<Point, Answer> answers) {
        answers.put(Point.BODY_TYPE, bodyType());
        answers.put(Point.POSE, pose());
        answers.put(Point.EARS, ears());
        answers.put(Point.FUR, fur());
        answers.put(Point.FUR_TEST, furTest());
        answers.put(Point.SHOW_CLASS, showClass());
        answers.put(Point.WEIGHT_CLASS, weightClass());
        answers.put(Point.JUDGES_LOOK_FOR, judgesLookFor());
    }

    /** The body type of the breed's row, where it is sure. */
    static Optional<Shape> shape(Breed breed) {
        return breed.basis().sure("body type") ? Shape.of(breed.bodyType()) : Optional.empty();
    }

    /** The pose of the breed's row, where it is sure. */
    static Optional<Pose> pose(Breed breed) {
        return breed.basis().sure("pose") ? Pose.of(breed.pose()) : Optional.empty();
    }

    /** The fur of the breed's row, where it is sure. */
    static Optional<Fur> fur(Breed breed) {
        return breed.basis().sure("fur") ? Fur.of(breed.fur()) : Optional.empty();
    }

    private Answer bodyType() {
        return known(rabbit.breed().filter(breed -> shape(breed).isPresent()).map(Breed::bodyType), Point.BODY_TYPE);
    }

    private Answer pose() {
        return known(rabbit.breed().flatMap(BreedPoints::pose).map(Pose::words), Point.POSE);
    }

    private Answer ears() {
        return known(rabbit.breed().filter(breed -> breed.basis().sure("ears")).map(Breed::ears), Point.EARS);
    }

    private Answer fur() {
        return known(rabbit.breed().flatMap(breed -> fur(breed).map(fur -> fur.on(breed.name(), level))), Point.FUR);
    }

    private Answer furTest() {
        return known(rabbit.breed().flatMap(BreedPoints::fur).map(fur -> fur.does(level)), Point.FUR_TEST);
    }

    private Answer judgesLookFor() {
        return known(
                rabbit.breed()
                        .filter(breed -> breed.basis().sure("judges look for"))
                        .map(breed -> breed.showing().judgesLookFor().strip().replaceAll("\\.$", ""))
                        .filter(words -> !words.isEmpty()),
                Point.JUDGES_LOOK_FOR);
    }

    private Answer showClass() {
        if (rabbit.breed().isEmpty()) {
            return new Check("whether your show takes a mixed breed", "a mixed breed has no breed class");
        }
        Optional<ShowClass> found = ShowClass.of(rabbit, show);
        if (found.isEmpty()) {
            return check(Point.SHOW_CLASS);
        }
        String classes = rabbit.breed().map(Breed::classes).map(String::valueOf).orElse("");
        return new Known(
                found.get().word() + " " + rabbit.sex().word(), classes + "-class rule, and its age on show day");
    }

    private Answer weightClass() {
        Optional<ShowClass> found = ShowClass.of(rabbit, show);
        if (found.isEmpty()) {
            return check(Point.WEIGHT_CLASS);
        }
        String who = found.get().word() + " " + rabbit.sex().word();
        if (found.get() != ShowClass.SENIOR) {
            return new Check(
                    "weight limits of " + Spoken.article(who), "our breed table has the limits of seniors only");
        }
        Optional<Limits> limits = rabbit.breed().flatMap(breed -> Limits.senior(breed, rabbit.sex()));
        if (limits.isEmpty()) {
            return new Check("weight limits of " + Spoken.article(who), NOT_SURE);
        }
        String printed = limits.get().printed();
        return rabbit.weight()
                .<Answer>map(weight -> new Known(
                        switch (limits.get().side(weight)) {
                            case WITHIN -> "within its limits: " + printed;
                            case OVER -> "over its limits (" + printed + "): ask your leader before entry";
                            case UNDER -> "under its limits (" + printed + "): ask your leader before entry";
                        },
                        TABLE + ", senior weights, and its weight"))
                .orElseGet(() -> new Check("weight, within its limits: " + printed, "no weight in the club’s list"));
    }

    private Answer known(Optional<String> words, Point point) {
        return words.<Answer>map(found -> new Known(found, TABLE)).orElseGet(() -> check(point));
    }

    private Answer check(Point point) {
        return new Check(point.ask(), rabbit.breed().isPresent() ? NOT_SURE : MIXED);
    }
}
