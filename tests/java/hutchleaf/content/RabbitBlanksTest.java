package hutchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.model.Level;
import hutchleaf.rabbit.Findings;
import hutchleaf.rabbit.RabbitEngine;
import hutchleaf.rabbit.Samples;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The blanks that an author may write, held against what is known of a rabbit. */
final class RabbitBlanksTest {
    private static final LocalDate SHOW = LocalDate.of(2026, 8, 8);

    /** Pip, a grown Californian with a weight, lacks nothing. */
    @Test
    void everyBlankForARabbitIsFilledWhenAllIsKnown() {
        Findings findings = RabbitEngine.of(Samples.demo("Pip"), SHOW, Level.SENIOR);
        List<String> blanks =
                Blanks.NAMES.stream().filter(name -> name.startsWith("rabbit.")).toList();

        assertThat(blanks)
                .hasSize(16)
                .allSatisfy(
                        blank -> assertThat(findings.filling(blank)).as(blank).isPresent());
    }
}
