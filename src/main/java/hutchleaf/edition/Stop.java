package hutchleaf.edition;

import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Station;
import java.util.Optional;

/**
 * A stop of the routine as one level studies it.
 *
 * @param scored the block of the score sheet that it is scored in; empty where nothing is scored
 */
public record Stop(Station station, Leaf leaf, Optional<ScoreSheet.Block> scored) {}
