package hutchleaf.proof;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.model.Block;
import hutchleaf.model.Level;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Subject;
import hutchleaf.problem.Place;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Every procedure with a live rabbit says what not to do, and in one sentence what shows that the rabbit has had enough and
 * what to do then.
 *
 * <p>A procedure is a numbered list in a topic of the routine or of handling. Stops at which only the voice works are
 * left out.
 */
final class CautionCheck implements Check {
    /** Introduction; comments and close. */
    private static final Set<Integer> VOICE_ONLY = Set.of(3, 16);

    private static final Pattern TROUBLE = Pattern.compile(
            "\\b(kick|struggl|pant|shak|fight|wriggl|scrambl|climb|pulls|afraid|frighten|scared|fear|jump|squirm|bulge"
                    + "|breathes|slips|tries|stiff|tense|still|bleed|sore|flak|runny|red|minute|hot)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern STOP = Pattern.compile(
            "\\b(stop|wait|until it is (?:still|calm)|set its feet down|let go|feet down|turn it back|put it down|set it down|kneel|start again|give it time|let it rest|back (?:in|to) "
                    + "|take your hands? away|stays? at home|call (?:a|an) (?:grown-up|adult))",
            Pattern.CASE_INSENSITIVE);

    @Override
    public void check(Material material, Findings findings) {
        for (Edition edition : material.editions()) {
            edition.all()
                    .filter(CautionCheck::hasHands)
                    .forEach(leaf -> procedure(leaf).ifPresent(at -> check(leaf, at, edition.level(), findings)));
        }
    }

    private static boolean hasHands(Leaf leaf) {
        Subject subject = leaf.head().subject();
        return subject == Subject.HANDLING
                || (subject == Subject.ROUTINE
                        && !VOICE_ONLY.contains(leaf.head().code()));
    }

    /** Where the first numbered list stands. */
    private static Optional<Place> procedure(Leaf leaf) {
        return leaf.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Numbered.class::isInstance)
                .map(Block::at)
                .findFirst();
    }

    private static void check(Leaf leaf, Place at, Level level, Findings findings) {
        Optional<Section> caution = leaf.section(Kind.CAUTION);
        if (caution.isEmpty()) {
            findings.error(
                    Rule.SAFETY_CAUTION,
                    at,
                    level,
                    "these steps have no caution for " + Findings.LEVELS,
                    "add ## Caution: what not to do, and when to stop");
            return;
        }
        boolean stops = Sentences.of(caution.get().text().plain()).stream()
                .anyMatch(sentence -> TROUBLE.matcher(sentence).find()
                        && STOP.matcher(sentence).find());
        if (!stops) {
            findings.error(
                    Rule.SAFETY_STOP_RULE,
                    caution.get().at(),
                    level,
                    "the caution has no stop rule for " + Findings.LEVELS,
                    "say what shows that the rabbit has had enough, and what to do then");
        }
    }
}
