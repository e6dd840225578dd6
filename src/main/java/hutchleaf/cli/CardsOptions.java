package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.sheet.CardFormat;
import hutchleaf.sheet.CardMaking;
import hutchleaf.sheet.Paper;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What was asked of {@code cards}.
 *
 * @param format in place of each level's own
 * @param overfull what becomes of a card that a small card cannot hold
 * @param printer what the printer does to a page
 */
record CardsOptions(
        Which which,
        Optional<CardFormat> format,
        CardMaking making,
        Overfull overfull,
        PrinterSetting printer,
        Files files) {
    /**
     * Which cards.
     *
     * @param level one only; empty for all
     * @param codes these and no others; empty for the whole deck
     * @param topic a title or a path
     * @param since leaves out what this level's deck had already
     */
    record Which(
            Optional<Level> level, List<String> codes, Optional<String> topic, boolean core, Optional<Level> since) {
        Which {
            codes = List.copyOf(codes);
        }
    }

    /** What becomes of a card that a small card cannot hold. */
    enum Overfull {
        /** It is printed in the level's own size, in a file beside the others. */
        BESIDE,
        /** It stops the run. */
        ERROR
    }

    /** Where files come from and go to; without a folder the embedded content or templates are used. */
    record Files(
            Paper paper,
            Club.Spelling spelling,
            Path out,
            Optional<Path> content,
            Optional<Path> templates,
            Outputs.Pictures pictures,
            Club.Saver saver) {}
}
