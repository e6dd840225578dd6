package hutchleaf.rabbit;

import static hutchleaf.rabbit.Comments.build;

import hutchleaf.rabbit.Comments.Build;
import java.util.Optional;

/** What is praised and what is looked for on a coat, by fur type. Consistent with {@code content/fur-types}. */
final class FurComments {
    private static final String PART = "fur";

    private FurComments() {}

    static Build junior(Optional<Fur> fur) {
        return fur.map(FurComments::junior).orElseGet(() -> build(PART, "clean and even", "dull, thin or in moult"));
    }

    private static Build junior(Fur fur) {
        return switch (fur) {
            case FLYBACK -> build(PART, "snaps back and shines", "slow or dull");
            case ROLLBACK -> build(PART, "deep, soft and dense", "thin");
            case STANDING -> build(PART, "stays up and is dense", "falls back");
            case REX -> build(PART, "upright and even", "lies down, or is uneven");
            case SATIN -> build(PART, "shines like glass", "dull");
            case WOOL -> build(PART, "long and free of mats", "short or matted");
        };
    }

    static Build older(Optional<Fur> fur) {
        return fur.map(FurComments::older)
                .orElseGet(() -> build(PART, "dense, clean and even", "thin, stained or in moult"));
    }

    private static Build older(Fur fur) {
        return switch (fur) {
            case FLYBACK -> build(PART, "a quick snap and gloss", "a slow return, or thin guard hairs");
            case ROLLBACK -> build(PART, "a slow, soft roll over a deep undercoat", "a snap, or a thin undercoat");
            case STANDING -> build(PART, "stands until it is stroked back", "falls back, or is too short");
            case REX -> build(PART, "springs up, even, dense and plush", "guard hairs that rise above the rest");
            case SATIN -> build(PART, "a glassy sheen, fine and dense", "dull, coarse or thin");
            case WOOL -> build(PART, "long, dense and free of mats", "short, thin or matted");
        };
    }
}
