package hutchleaf.rabbit;

import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.rabbit.Answer.Check;
import hutchleaf.rabbit.Answer.Known;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The points that a coat answers: eye, nails and group come from its row of the colour table. */
final class CoatPoints {
    static final String TABLE = "colour table";
    private static final String NOT_SURE = "our colour table is not sure";
    private static final String BY_BREED = "it differs from breed to breed";
    private static final String BY_BASE = "it depends on a colour that the list does not name";
    private static final String MARKED = "a marked breed has a rule of its own";

    /**
     * Breeds whose white coat carries marks of a colour. The colour's row speaks of a coat that has it all over, so its
     * nails and its group are not theirs. Sources: adrc, espot-std, harl-marks and hotot-c of sources.md.
     */
    private static final Set<String> MARKED_BREEDS = Set.of(
            "Blanc de Hotot",
            "Checkered Giant",
            "Dutch",
            "Dwarf Hotot",
            "Dwarf Papillon",
            "English Spot",
            "Harlequin",
            "Rhinelander");

    /** The eye of a Dutch is that of its coloured part (adrc); for the other marked breeds that rests on memory. */
    private static final String DUTCH = "Dutch";

    /** The row that describes a whole Hotot, eye band and all. */
    private static final String HOTOT_ROW = "Hotot";

    private final Rabbit rabbit;
    private final Level level;

    CoatPoints(Rabbit rabbit, Level level) {
        this.rabbit = rabbit;
        this.level = level;
    }

    void addTo(Map<Point, Answer> answers) {
        answers.put(Point.VARIETY, variety());
        answers.put(Point.EYE, eye());
        answers.put(Point.NAILS, nails());
        answers.put(Point.COLOUR_GROUP, group());
    }

    private Answer variety() {
        String said = Spoken.variety(rabbit.coat().variety());
        return said.isEmpty() ? new Check(Point.VARIETY.ask(), BreedPoints.MIXED) : new Known(said, RabbitEngine.LIST);
    }

    private Answer eye() {
        Optional<Colour> row = row();
        if (row.isEmpty()) {
            return new Check(Point.EYE.ask(), noRow());
        }
        Colour colour = row.get();
        if (!colour.basis().sure("eye")) {
            return new Check(Point.EYE.ask(), NOT_SURE);
        }
        if (marked() && !breedName().equals(DUTCH) && !hototRow(colour)) {
            return new Check(Point.EYE.ask(), MARKED);
        }
        return Eye.read(colour.eye())
                .<Answer>map(eye -> new Known(eye.words(level), TABLE + eye.remark()))
                .orElseGet(() -> new Check(Point.EYE.ask(), BY_BASE));
    }

    private Answer nails() {
        Optional<Colour> row = row();
        if (row.isEmpty()) {
            return new Check(Point.NAILS.ask(), noRow());
        }
        if (rabbit.coat().broken()) {
            return new Check(Point.NAILS.ask(), "a broken coat: " + BY_BREED);
        }
        if (marked()) {
            return new Check(Point.NAILS.ask(), MARKED);
        }
        Colour colour = row.get();
        if (!colour.basis().sure("nails")) {
            return new Check(Point.NAILS.ask(), NOT_SURE);
        }
        return colour.nails().endsWith(", matching")
                ? new Known(colour.nails().substring(0, colour.nails().indexOf(',')), TABLE)
                : new Check(Point.NAILS.ask(), BY_BREED);
    }

    private Answer group() {
        Optional<Colour> row = row();
        if (row.isEmpty()) {
            return new Check(Point.COLOUR_GROUP.ask(), noRow());
        }
        if (rabbit.coat().broken()) {
            return new Known("broken", TABLE);
        }
        if (marked()) {
            return new Check(Point.COLOUR_GROUP.ask(), MARKED);
        }
        Colour colour = row.get();
        return colour.basis().sure("group") && !colour.group().equals("AOV")
                ? new Known(colour.group(), TABLE + "; some breeds name it in another way")
                : new Check(Point.COLOUR_GROUP.ask(), BY_BREED);
    }

    /** The row to go by: a rabbit of mixed breed is held to no variety. */
    private Optional<Colour> row() {
        return rabbit.breed().flatMap(breed -> rabbit.coat().colour());
    }

    private String noRow() {
        return rabbit.breed().isPresent() ? "a colour that our table does not have" : BreedPoints.MIXED;
    }

    private String breedName() {
        return rabbit.breed().map(Breed::name).orElse("");
    }

    private boolean marked() {
        return MARKED_BREEDS.contains(breedName());
    }

    private static boolean hototRow(Colour colour) {
        return colour.name().startsWith(HOTOT_ROW);
    }
}
