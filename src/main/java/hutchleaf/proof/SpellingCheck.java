package hutchleaf.proof;

import hutchleaf.model.Wording;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** One spelling, and one form of each term, by the tables in {@code words/}. */
final class SpellingCheck implements Check {
    @Override
    public void check(Material material, Findings findings) {
        Wording wording = material.library().wording();
        boolean uk = material.settings().spelling() == Spelling.UK;
        Map<String, String> spelled = new HashMap<>();
        for (Wording.Spelling pair : wording.spellings()) {
            spelled.put(uk ? pair.us() : pair.uk(), uk ? pair.uk() : pair.us());
        }
        Map<String, String> formed = wording.forms().stream()
                .collect(Collectors.toMap(Wording.Form::not, Wording.Form::write, (one, other) -> one));
        // A word may go on: color, colors, colored.
        find(material, spelled, "(?:s|d|ed|ing|ings|er|ers|ful|less|ly|y|able|al)?", Rule.WORD_SPELLING, findings);
        find(material, formed, "(?:s|es|'s)?", Rule.WORD_FORM, findings);
    }

    private static void find(
            Material material, Map<String, String> mends, String ending, Rule rule, Findings findings) {
        if (mends.isEmpty()) {
            return;
        }
        List<String> wrong = mends.keySet().stream().sorted().toList();
        Pattern pattern = Pattern.compile(
                "(?<![\\w-])(" + wrong.stream().map(Pattern::quote).collect(Collectors.joining("|")) + ")" + ending
                        + "(?![\\w-])",
                Pattern.CASE_INSENSITIVE);
        for (Passage passage : material.passages()) {
            Matcher matcher = pattern.matcher(passage.text());
            while (matcher.find()) {
                String base = matcher.group(1).toLowerCase(Locale.ROOT);
                findings.error(
                        rule,
                        passage.at(),
                        "'" + matcher.group() + "' is written here",
                        "write '" + mends.get(base) + "'");
            }
        }
    }
}
