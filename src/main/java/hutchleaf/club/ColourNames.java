package hutchleaf.club;

import hutchleaf.club.ColourName.Kind;
import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Library;
import hutchleaf.model.Rabbit.Coat;
import hutchleaf.problem.NearMiss;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds a coat by the words that a leader writes. Case, signs and the order of words make no difference: {@code Black
 * Tortoise} is {@code tortoise, black}. A row that is for the rabbit's breed alone goes before one for all, and a row's own
 * name before a second one.
 */
final class ColourNames {
    private static final String BROKEN = "broken";
    private static final String WHITE = "white";

    /** Short forms that the trade writes (common practice, no source). */
    private static final Map<String, String> SHORT = Map.of("rew", "ruby-eyed white", "bew", "blue-eyed white");

    private final List<ColourName> names;

    ColourNames(Library.Tables tables) {
        names = tables.colours().stream()
                .flatMap(colour -> ColourName.of(colour, tables.breeds()))
                .toList();
    }

    /** A coat, or why there is none. */
    record Found(Optional<Coat> coat, String what, String mend) {
        static Found of(Coat coat) {
            return new Found(Optional.of(coat), "", "");
        }

        static Found not(String what, String mend) {
            return new Found(Optional.empty(), what, mend);
        }
    }

    /** @param breed empty for a mixed breed, whose coat may have any name or none of the table's */
    Found find(Optional<Breed> breed, String written) {
        String typed = full(written);
        boolean broken = Arrays.asList(ColourName.words(typed)).contains(BROKEN);
        String solid = broken ? without(typed) : typed;
        if (broken && solid.isEmpty() && breed.isPresent()) {
            return Found.not(
                    "the colour '" + written + "' does not say of which colour the patches are",
                    "write it too, for example broken black");
        }
        Optional<Coat> coat = coat(breed, solid, broken);
        if (coat.isPresent()) {
            return Found.of(coat.get());
        }
        if (breed.isEmpty() || ColourHabit.breedsOwn(breed, solid)) {
            return Found.of(new Coat(written, Optional.empty(), broken));
        }
        return Found.not("unknown colour '" + written + "' for a " + breed.get().name(), mend(breed, solid, broken));
    }

    private Optional<Coat> coat(Optional<Breed> breed, String solid, boolean broken) {
        Optional<ColourName> tied = first(name -> !name.breeds().isEmpty() && name.isFor(breed) && name.matches(solid));
        Optional<Coat> under = broken ? Optional.empty() : underACoat(breed, solid);
        if (tied.isEmpty() && under.isPresent()) {
            return under;
        }
        return tied.or(() -> byHabit(breed, solid))
                .or(() -> plain(solid, Kind.OWN))
                .or(() -> plain(solid, Kind.SECOND))
                .filter(name -> !broken || canBeBroken(name.colour()))
                .map(name -> new Coat((broken ? BROKEN + " " : "") + name.said(), Optional.of(name.colour()), broken));
    }

    private Optional<Coat> underACoat(Optional<Breed> breed, String solid) {
        return ColourHabit.coat(breed, solid)
                .flatMap(row -> first(name -> name.matches(row)))
                .map(name -> new Coat(solid.toLowerCase(Locale.ROOT), Optional.of(name.colour()), false));
    }

    private Optional<ColourName> byHabit(Optional<Breed> breed, String solid) {
        return ColourHabit.rows(breed, solid)
                .flatMap(row -> first(name -> name.matches(row)).stream())
                .findFirst();
    }

    private Optional<ColourName> plain(String typed, Kind kind) {
        return first(name -> name.breeds().isEmpty() && name.kind() == kind && name.matches(typed));
    }

    private Optional<ColourName> first(Predicate<ColourName> wanted) {
        return names.stream().filter(wanted).findFirst();
    }

    private static boolean canBeBroken(Colour colour) {
        return !colour.name().contains(WHITE) && !colour.group().equals(BROKEN);
    }

    private String mend(Optional<Breed> breed, String solid, boolean broken) {
        if (broken && names.stream().anyMatch(name -> name.matches(solid))) {
            return "a broken coat is white with another colour: write that one";
        }
        if (solid.toLowerCase(Locale.ROOT).equals(WHITE)) {
            return BreedNames.oneOf(ColourHabit.whites(breed)).orElse("");
        }
        List<String> typed = List.of(ColourName.words(solid));
        List<String> close = names.stream()
                .filter(name -> name.kind() == Kind.OWN && name.isFor(breed))
                .filter(name -> startAlike(typed, List.of(ColourName.words(name.written()))))
                .map(name -> name.colour().name())
                .distinct()
                .toList();
        return BreedNames.oneOf(close)
                .or(() -> NearMiss.of(
                                solid,
                                names.stream()
                                        .filter(name -> name.isFor(breed))
                                        .map(ColourName::written)
                                        .toList())
                        .map(near -> "did you mean '" + near + "'?"))
                .orElse("write a colour of colours/colours.md, for example black, opal or chestnut agouti");
    }

    /** Whether every word typed is the start of a word of the name. */
    private static boolean startAlike(List<String> typed, List<String> name) {
        return typed.stream().allMatch(word -> name.stream().anyMatch(other -> other.startsWith(word)));
    }

    private static String full(String written) {
        return SHORT.getOrDefault(written.toLowerCase(Locale.ROOT), written);
    }

    /** The words beside "broken", as written. */
    private static String without(String typed) {
        return typed.replaceAll("(?i)[\\s,]*\\bbroken\\b[\\s,]*", " ").strip();
    }
}
