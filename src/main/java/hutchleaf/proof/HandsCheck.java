package hutchleaf.proof;

import hutchleaf.model.Subject;
import hutchleaf.proof.Passage.Role;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A child has two hands. A step that holds names the hand that does it, and no step needs a third.
 *
 * <p>Hands are counted by what they are called: a head hand, a rump hand and a free hand are three, unless the step says
 * that one of them leaves. Once the head hand stays, "both hands" is a third as well.
 */
final class HandsCheck implements Check {
    private static final Pattern HOLD = Pattern.compile(
            "(?<!your |the |a |our |my )\\b(hold|holds|holding|steady|steadies|support|supports|carry|carries|lift|lifts|cup|cups|grasp|grasps|grip"
                    + "|grips)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NAMED =
            Pattern.compile("\\b(hands?|arms?|forearm|elbow|fingers?|thumb|helper|adult|grown-up)\\b");
    private static final Pattern ROLE = Pattern.compile(
            "\\b(head|rump|chest|free|other|second|third|left|right|same) hand\\b|\\b(one|a|an open|one open) hand\\b"
                    + "|\\bhand (?:under|over|on|behind|at) the (rump|head|chest|shoulders)\\b");
    private static final Pattern BOTH = Pattern.compile("\\b(both|two) hands\\b");
    private static final Pattern HEAD_HAND_STAYS =
            Pattern.compile("\\bhead hand (stays|only|keeps)|keep the head hand");
    private static final Pattern LEAVES = Pattern.compile(
            "\\b(is free|now free|are free|leave|leaves|let go|away|move the hand|moves?|take|only when|back under|loosen|change)\\b");
    private static final int TWO = 2;

    @Override
    public void check(Material material, Findings findings) {
        Set<String> headHandStays = new TreeSet<>();
        for (Passage passage : material.passages()) {
            if (passage.role() == Role.STEP && hasHands(passage)) {
                step(passage, headHandStays, findings);
            }
        }
    }

    private static boolean hasHands(Passage passage) {
        Subject subject = passage.topic().head().subject();
        return subject == Subject.ROUTINE || subject == Subject.HANDLING;
    }

    private static void step(Passage passage, Set<String> headHandStays, Findings findings) {
        String text = passage.text().toLowerCase(Locale.ROOT);
        String procedure = passage.topic().head().path() + passage.levels();
        if (HOLD.matcher(text).find() && !NAMED.matcher(text).find()) {
            findings.error(
                    Rule.SAFETY_HANDS,
                    passage.at(),
                    "the step holds, but names no hand: '" + passage.text() + "'",
                    "say what each hand does");
        }
        thirdHand(text, headHandStays.contains(procedure))
                .ifPresent(what -> findings.error(
                        Rule.SAFETY_HANDS,
                        passage.at(),
                        what,
                        "two hands only: let one go first, or make it two steps"));
        if (HEAD_HAND_STAYS.matcher(text).find()) {
            headHandStays.add(procedure);
        }
    }

    private static Optional<String> thirdHand(String text, boolean headHandStays) {
        List<String> roles = roles(text);
        boolean holdsOn = !LEAVES.matcher(text).find();
        if (roles.size() > TWO && holdsOn) {
            return Optional.of("the step needs a third hand: " + String.join(", ", roles));
        }
        Matcher both = BOTH.matcher(text);
        if (headHandStays && both.find() && holdsOn) {
            return Optional.of("the head hand stays, so '" + both.group() + "' are three");
        }
        return Optional.empty();
    }

    /** The different hands a step names: "one" and "other" are hands of their own, "the same hand" is not. */
    private static List<String> roles(String text) {
        Set<String> roles = new TreeSet<>();
        Matcher matcher = ROLE.matcher(text);
        while (matcher.find()) {
            String role =
                    matcher.group(1) != null ? matcher.group(1) : matcher.group(2) != null ? "one" : matcher.group(3);
            if (!role.equals("same")) {
                roles.add(role + " hand");
            }
        }
        return List.copyOf(roles);
    }
}
