package hutchleaf.proof;

import hutchleaf.edition.Edition;
import hutchleaf.model.Library;
import hutchleaf.problem.Place;
import java.util.List;
import java.util.Optional;

/** The door of this stage: the library and its editions in, a report out. */
public final class Proof {
    /**
     * What a run may choose.
     *
     * @param spelling the spelling the tree is held to
     * @param spache familiar words for the Spache grade of the primary edition; empty where none was named
     * @param daleChall familiar words for the Dale-Chall score of the others; empty where none was named
     */
    public record Settings(Spelling spelling, Optional<WordList> spache, Optional<WordList> daleChall) {}

    private static final List<Check> CHECKS = List.of(
            new CoverageCheck(),
            new CautionCheck(),
            new HandsCheck(),
            new HealthCheck(),
            new BanCheck(),
            new NumberCheck(),
            new TypeCheck(),
            new SourceCheck(),
            new CardCheck(),
            new TwinCheck(),
            new CoreCheck(),
            new TermCheck(),
            new SpellingCheck(),
            new FigureCheck());

    /** One line of words of the tree, and where it stands. */
    public record Line(Place at, String text) {}

    private Proof() {}

    /** Every line of words of the tree. */
    public static List<Line> lines(Library library) {
        return Passages.of(library).stream()
                .map(passage -> new Line(passage.at(), passage.text()))
                .toList();
    }

    /** Runs every rule and adds what they find. */
    public static Report read(Library library, List<Edition> editions, Settings settings, Findings findings) {
        Material material = Material.of(library, editions, settings);
        CHECKS.forEach(check -> check.check(material, findings));
        List<Reading> readings = ReadingCheck.measure(material, findings);
        return new Report(findings.sorted(), CoverageCheck.count(editions), readings);
    }
}
