package hutchleaf.proof;

import hutchleaf.model.Source;
import hutchleaf.proof.Passage.Role;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words and signs that no page may hold, each with the way to mend it. */
final class BanCheck implements Check {
    /** Whether a warning against the thing, in the same clause, makes it right. */
    private enum Warned {
        IS_RIGHT,
        IS_STILL_WRONG
    }

    private record Ban(Rule rule, Pattern pattern, Warned warned, String what, String mend) {}

    private static final Pattern WARNING = Pattern.compile(
            "\\b(never|not|no|don['’]t|nobody|without|nor|instead of|wrong)\\b", Pattern.CASE_INSENSITIVE);

    /** Active ingredients end in these, by the stems of international nonproprietary names (WHO, from memory). */
    private static final String DRUG_STEMS =
            "\\w{3,}(?:cillin|mycin|floxacin|cycline|bendazole|mectin|oxicam|profen|conazole|sulfa|azuril)";

    private static final String OTHER_DRUGS = "selamectin|imidacloprid|fipronil|permethrin|simethicone|metoclopramide"
            + "|cisapride|aspirin|paracetamol|amprolium|sulfadimethoxine|antibiotics?|wormers?|dewormers?";

    private static final List<Ban> BANS = List.of(
            new Ban(
                    Rule.SAFETY_LIFT,
                    find(
                            "\\b(?:lift|lifts|pick|picks|picked|carry|carries|hold|holds|grab|grasp|haul|raise)\\b"
                                    + "[^.;]*\\b(?:by|at|with)\\b[^.;]{0,20}\\b(?:ears?|neck|scruff|loose skin|nape)\\b|\\bscruff(?:s|ed|ing)?\\b"),
                    Warned.IS_RIGHT,
                    "this reads as lifting by the ears or the neck skin",
                    "say: never by the ears or the neck skin"),
            new Ban(
                    Rule.SAFETY_DRUG,
                    find("\\b(?:" + DRUG_STEMS + "|" + OTHER_DRUGS + ")\\b"),
                    Warned.IS_STILL_WRONG,
                    "a drug is named",
                    "leave it out: ask a veterinarian"),
            new Ban(
                    Rule.SAFETY_DOSE,
                    find("\\b\\d+(?:\\.\\d+)?\\s*(?:mg|mcg|µg|cc|IU|drops?|tablets?|pills?)\\b"
                            + "|\\b(?:dose|doses|dosage|inject|injects|injection)\\b"),
                    Warned.IS_RIGHT,
                    "a dose is given",
                    "leave it out: a veterinarian decides"),
            new Ban(
                    Rule.SAFETY_FEED,
                    find("\\b(?:withhold|hold back|keep back|take away|remove|skip|starve|fast)\\b[^.;]{0,25}"
                            + "\\b(?:feed|food|water|hay|meals?|pellets)\\b|\\bwithout (?:feed|food|water|hay)\\b"
                            + "|\\bno (?:feed|food|water|hay) (?:before|for|until|on|the)\\b"),
                    Warned.IS_RIGHT,
                    "this reads as holding back feed or water",
                    "say: never hold back feed or water"),
            new Ban(
                    Rule.WORD_PRONOUN,
                    find("\\b(?:he|she|him|her|his|hers|himself|herself)\\b"),
                    Warned.IS_STILL_WRONG,
                    "the rabbit is 'it', and a person is 'they'",
                    "write it, its, they or their"),
            new Ban(
                    Rule.WORD_MARK,
                    find("[™®©]"),
                    Warned.IS_STILL_WRONG,
                    "a brand mark is printed",
                    "name the thing, not the brand"),
            new Ban(
                    Rule.WORD_ADDRESS,
                    find("\\bhttps?:|\\bwww\\.|\\b[\\w-]+\\.(?:com|org|net|edu|gov|info|co\\.uk)\\b|\\S@\\S"),
                    Warned.IS_STILL_WRONG,
                    "a web or mail address is printed",
                    "leave it out; sources stand in sources.md"));

    private static Pattern find(String pattern) {
        return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    @Override
    public void check(Material material, Findings findings) {
        for (Passage passage : material.passages()) {
            for (String sentence : Sentences.of(passage.text())) {
                BANS.forEach(ban -> check(ban, sentence, passage, findings));
            }
        }
        for (Source source : material.library().tables().sources().values()) {
            String printed = source.title() + " " + source.publisher();
            BANS.stream()
                    .filter(ban -> ban.rule() == Rule.WORD_MARK || ban.rule() == Rule.WORD_ADDRESS)
                    .filter(ban -> ban.pattern().matcher(printed).find())
                    .forEach(ban -> findings.error(ban.rule(), source.at(), ban.what(), ban.mend()));
        }
    }

    private static void check(Ban ban, String sentence, Passage passage, Findings findings) {
        Matcher matcher = ban.pattern().matcher(sentence);
        if (matcher.find() && !(ban.warned() == Warned.IS_RIGHT && isWarned(sentence, matcher, passage))) {
            findings.error(
                    ban.rule(),
                    passage.at(),
                    ban.what() + ": '" + matcher.group().strip() + "'",
                    ban.mend());
        }
    }

    /** The choices of a self-test are wrong on purpose, and its answer says so. */
    private static boolean isWarned(String sentence, Matcher found, Passage passage) {
        String before = sentence.substring(0, found.start());
        int clause = Math.max(before.lastIndexOf(';'), Math.max(before.lastIndexOf(','), before.lastIndexOf(':'))) + 1;
        return passage.role() == Role.CHOICE
                || WARNING.matcher(sentence.substring(clause, found.end())).find();
    }
}
