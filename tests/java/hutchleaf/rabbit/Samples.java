package hutchleaf.rabbit;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Library;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Sex;
import hutchleaf.model.Weight;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** What the tests of a rabbit start from: the embedded tables, and rabbits made for a test. */
public final class Samples {
    static final LocalDate SHOW = LocalDate.of(2026, 8, 8);
    public static final Library LIBRARY = library();

    private Samples() {}

    private static Library library() {
        Problems problems = new Problems();
        return LibraryReader.read(new ContentTree(Path.of("content"), "content"), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
    }

    static Breed breed(String name) {
        return LIBRARY.tables().breeds().stream()
                .filter(breed -> plain(breed.name()).equals(plain(name)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no breed " + name));
    }

    static Colour colour(String name) {
        return LIBRARY.tables().colours().stream()
                .filter(colour -> plain(colour.name()).equals(plain(name)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no colour " + name));
    }

    private static String plain(String name) {
        return name.replace('’', '\'').toLowerCase(Locale.ROOT);
    }

    /** A coat as a roster writes it, {@code broken black} for a broken one. */
    static Rabbit.Coat coat(String written) {
        boolean broken = written.startsWith("broken ");
        Colour colour = colour(broken ? written.substring("broken ".length()) : written);
        return new Rabbit.Coat(written, Optional.of(colour), broken);
    }

    static Rabbit rabbit(String breed, String coat, Sex sex, LocalDate born) {
        return rabbit(Optional.of(breed(breed)), coat(coat), sex, born, Optional.of(pounds("4.4")));
    }

    static Rabbit rabbit(Optional<Breed> breed, Rabbit.Coat coat, Sex sex, LocalDate born, Optional<Weight> weight) {
        return new Rabbit("Pebble", breed, coat, sex, born, "PB1", weight, new Place("members.csv", 2));
    }

    /** A rabbit of no breed. */
    static Rabbit mixed(Sex sex, LocalDate born) {
        return rabbit(Optional.empty(), new Rabbit.Coat("", Optional.empty(), false), sex, born, Optional.empty());
    }

    public static Rabbit demo(String name) {
        return DemoRoster.rabbits().stream()
                .filter(rabbit -> rabbit.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no rabbit " + name));
    }

    static Weight pounds(String written) {
        return Weight.ofPounds(Double.parseDouble(written), written + " lb");
    }
}
