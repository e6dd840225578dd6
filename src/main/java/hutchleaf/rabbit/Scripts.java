package hutchleaf.rabbit;

import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import java.time.LocalDate;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fits the scripts of the routine, which speak of any rabbit, to one. */
final class Scripts {
    static final int SEX_STOP = 12;

    /** How the scripts of the sex stop begin the sentence that holds for bucks alone. */
    private static final Pattern IF_A_BUCK = Pattern.compile("\\s*If it is a buck\\b[^.]*\\.");

    /** What a script says of a breed, and what is said of a rabbit that has none. */
    private static final Map<Pattern, String> MIXED = Map.of(
            Pattern.compile("The breed is mixed breed\\b"), "It is of mixed breed",
            Pattern.compile("My mixed breed is\\b"), "My mixed breed rabbit is",
            Pattern.compile("My mixed breed, from"), "My rabbit, from",
            Pattern.compile(", as the (?:breed should be|standard asks)\\b"), "",
            Pattern.compile(" and right for the breed\\b"), "",
            Pattern.compile(" in the way of its breed\\b"), " in the way of its body type",
            Pattern.compile(" in the way that belongs to this breed\\b"), " in the way that suits its body type");

    private Scripts() {}

    static String fitted(Rabbit rabbit, LocalDate show, int stop, Level level, String sayIt) {
        String fitted = sayIt;
        if (rabbit.breed().isEmpty()) {
            for (Map.Entry<Pattern, String> said : MIXED.entrySet()) {
                fitted = said.getKey().matcher(fitted).replaceAll(said.getValue());
            }
        }
        if (stop != SEX_STOP) {
            return fitted;
        }
        String added =
                SexCheck.added(rabbit, show, level).map(words -> " " + words).orElse("");
        return IF_A_BUCK.matcher(fitted).replaceAll(Matcher.quoteReplacement(added));
    }
}
