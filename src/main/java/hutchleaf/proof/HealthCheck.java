package hutchleaf.proof;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.model.Level;
import hutchleaf.model.Subject;
import hutchleaf.problem.Place;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Every health topic hands over to a veterinarian and says that a sick rabbit stays at home; what people can catch comes
 * with washing hands.
 */
final class HealthCheck implements Check {
    private static final Pattern VETERINARIAN = Pattern.compile("\\bveterinarian", Pattern.CASE_INSENSITIVE);
    private static final Pattern GROWN_UP = Pattern.compile("\\b(grown-up|adult)", Pattern.CASE_INSENSITIVE);
    private static final Pattern HOME = Pattern.compile(
            "\\b(stays?|keep|leave|kept)\\b[^.]*\\bhome\\b|\\bnot (come|go) to the show\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern CATCHING = Pattern.compile(
            "\\bzoonos|\\bringworm|\\b(people|you|children|humans?) can (also )?catch\\b|\\bpass(es)? to people\\b"
                    + "|\\bspreads? to people\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NOT = Pattern.compile("\\b(not|no|never|neither)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern WASH =
            Pattern.compile("\\bwash[^.]*\\bhands?\\b|\\bhand ?washing\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public void check(Material material, Findings findings) {
        for (Edition edition : material.editions()) {
            edition.all()
                    .forEach(leaf -> check(leaf, text(leaf, edition.level(), material), edition.level(), findings));
        }
    }

    private static String text(Leaf leaf, Level level, Material material) {
        return material.of(leaf, level).stream().map(Passage::text).collect(Collectors.joining("\n"));
    }

    private static void check(Leaf leaf, String text, Level level, Findings findings) {
        Place at = leaf.head().credits().at();
        if (leaf.head().subject() == Subject.HEALTH) {
            boolean asks = VETERINARIAN.matcher(text).find()
                    || (level == Level.PRIMARY && GROWN_UP.matcher(text).find());
            if (!asks) {
                findings.error(
                        Rule.SAFETY_VETERINARIAN,
                        at,
                        level,
                        "nothing sends the " + Findings.LEVELS + " reader to a veterinarian",
                        "say: ask a veterinarian");
            }
            if (!HOME.matcher(text).find()) {
                findings.error(
                        Rule.SAFETY_STAYS_HOME,
                        at,
                        level,
                        "nothing tells the " + Findings.LEVELS + " reader that a sick rabbit stays at home",
                        "say so");
            }
        }
        if (catching(text) && !WASH.matcher(text).find()) {
            findings.error(
                    Rule.SAFETY_HANDWASHING,
                    at,
                    level,
                    "people can catch this, and the " + Findings.LEVELS + " reader is not told to wash hands",
                    "add it");
        }
    }

    private static boolean catching(String text) {
        List<String> sentences =
                text.lines().flatMap(line -> Sentences.of(line).stream()).toList();
        return sentences.stream()
                .anyMatch(sentence -> CATCHING.matcher(sentence).find()
                        && !NOT.matcher(sentence).find());
    }
}
