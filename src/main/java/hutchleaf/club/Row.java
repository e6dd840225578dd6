package hutchleaf.club;

import hutchleaf.club.Divisions.Counted;
import hutchleaf.model.Level;
import hutchleaf.model.Member.Division;
import hutchleaf.model.Rabbit;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;

/**
 * A row of the roster, read: as much of it as could be.
 *
 * @param cells what was written, and where the row's problems are noted
 */
record Row(Place at, String name, Person person, Optional<Rabbit> rabbit, Cells cells) {
    /** What a row says of the member. */
    record Person(
            Counted counted,
            Optional<Boolean> firstYear,
            Optional<Level> study,
            NeedsCells needs,
            Optional<Division> division) {}

    Problems problems() {
        return cells.problems();
    }

    boolean bad() {
        return problems().hasErrors();
    }

    /** Small or large letters make no other member. */
    String memberKey() {
        return key(name);
    }

    String rabbitName() {
        return cells.text(Column.RABBIT_NAME);
    }

    String ear() {
        return cells.text(Column.EAR_NUMBER);
    }

    static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
