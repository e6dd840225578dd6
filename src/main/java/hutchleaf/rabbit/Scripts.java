package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import java.time.LocalDate;

/** Fits the scripts of the routine to one rabbit. */
final class Scripts {
    private Scripts() {}

    static String fitted(Rabbit rabbit, LocalDate show, int stop, Level level, String sayIt) {
        return sayIt;
    }
}
