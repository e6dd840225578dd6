package hutchleaf.edition;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.contest.Samples;
import hutchleaf.model.Block;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.problem.Problems;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class LeaveOutTest {
    private static final String SEXING = "figures/sex-guide.svg";

    private static Stream<String> pictures(Library library, Level level) {
        return Edition.of(library, level, new Problems())
                .all()
                .flatMap(leaf -> leaf.sections().stream())
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Picture.class::isInstance)
                .map(block -> ((Block.Picture) block).file());
    }

    @Test
    void theSexingFigureIsForIntermediateAndSeniorOnly() {
        assertThat(pictures(Samples.library(), Level.JUNIOR)).doesNotContain(SEXING);
        assertThat(pictures(Samples.library(), Level.INTERMEDIATE)).contains(SEXING);
        assertThat(pictures(Samples.library(), Level.SENIOR)).contains(SEXING);
    }

    @Test
    void aClubCanLeaveItOutWithItsHeading() {
        Library library = LeaveOut.figures(Samples.library(), Set.of(SEXING));
        assertThat(pictures(library, Level.SENIOR)).doesNotContain(SEXING);
        assertThat(Edition.of(library, Level.SENIOR, new Problems()).all().flatMap(leaf -> leaf.sections().stream()))
                .allSatisfy(section -> assertThat(section.blocks()).isNotEmpty());
        assertThat(library.topics()).hasSameSizeAs(Samples.library().topics());
    }
}
