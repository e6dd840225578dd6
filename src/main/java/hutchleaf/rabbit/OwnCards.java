package hutchleaf.rabbit;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Library;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import java.util.List;
import java.util.Optional;

/** Flashcards about the member's own rabbit and its breed: one fact a card, and a line to write on where it is not known. */
public final class OwnCards {
    /** The group of their codes, which no topic may use: {@code 20.1}. */
    public static final int GROUP = 20;

    /** Where cards for any rabbit come from. */
    static final Place ANY = Place.whole("any rabbit");

    private final Findings findings;
    private final Level level;
    private final Library library;

    private OwnCards(Findings findings, Level level, Library library) {
        this.findings = findings;
        this.level = level;
        this.library = library;
    }

    /** The cards of a level: 6 for primary, 9 for junior, 12 for the older levels (10 for a mixed breed). A fact keeps its code. */
    public static List<Card> of(Findings findings, Level level, Library library) {
        OwnCards cards = new OwnCards(findings, level, library);
        return OwnFact.of(findings, level).stream().map(cards::card).toList();
    }

    private Card card(OwnFact fact) {
        return new Card(
                new CardCode(GROUP, fact.number()),
                Card.Need.CORE,
                new Levels(level, level),
                findings.rabbit().map(Rabbit::at).orElse(ANY),
                Words.of(fact.question(findings, level)),
                picture(fact),
                fact.answer(findings, level));
    }

    /** The outline of its body type beside the question that asks for its name. */
    private Optional<Block.Picture> picture(OwnFact fact) {
        if (fact != OwnFact.BODY_TYPE) {
            return Optional.empty();
        }
        return findings.rabbit()
                .flatMap(Rabbit::breed)
                .filter(breed -> breed.ears().equals("erect"))
                .flatMap(breed -> BreedPoints.shape(breed)
                        .flatMap(shape -> BreedPoints.pose(breed).flatMap(pose -> figure(shape, pose))))
                .filter(file -> library.tables().drawings().containsKey(file))
                .map(file -> new Block.Picture(
                        findings.rabbit().orElseThrow().at(),
                        file,
                        Block.Picture.Use.PLAIN,
                        "A rabbit on a table, from the side, with its head at the left.",
                        "Look at the back"));
    }

    /** The figure that shows this body type in this pose, when there is one. */
    private static Optional<String> figure(Shape shape, Pose pose) {
        return switch (shape) {
            case COMPACT ->
                switch (pose) {
                    case HEAD_LOW -> Optional.of("figures/body-compact.svg");
                    case HEAD_UP -> Optional.of("figures/body-compact-head-up.svg");
                    default -> Optional.empty();
                };
            case COMMERCIAL -> Optional.of("figures/body-commercial.svg");
            case SEMI_ARCH -> Optional.of("figures/body-semi-arch.svg");
            case FULL_ARCH -> Optional.of("figures/body-full-arch.svg").filter(file -> pose == Pose.ON_ITS_TOES);
            case CYLINDRICAL -> Optional.of("figures/body-cylindrical.svg").filter(file -> pose == Pose.STRETCHED);
        };
    }
}
