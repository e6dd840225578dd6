package hutchleaf.proof;

import hutchleaf.model.Fact;
import hutchleaf.proof.Passage.Role;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Numbers live in {@code facts.md}. A number written out beside a fact's unit or name is an error where the fact says the
 * same, and a warning where it may be a fact that is missing. The choices of a self-test are wrong on purpose.
 */
final class NumberCheck implements Check {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.#-])\\d+(?:\\.\\d+)?(?![\\w-]|\\.\\d)");
    private static final Set<Role> LEFT_OUT = Set.of(Role.CHOICE, Role.TITLE, Role.HEADING);

    private record Named(Fact fact, Pattern pattern) {}

    @Override
    public void check(Material material, Findings findings) {
        Collection<Fact> facts = material.library().tables().facts().values();
        Pattern beside = besideUnit(facts);
        List<Named> named = facts.stream()
                .map(fact -> new Named(fact, Pattern.compile("\\b" + Pattern.quote(fact.id()) + "\\b")))
                .toList();
        for (Passage passage : material.passages()) {
            if (!LEFT_OUT.contains(passage.role())
                    && NUMBER.matcher(passage.text()).find()) {
                check(passage, beside, facts, named, findings);
            }
        }
    }

    /** A number, perhaps the low end of a range, and the first word of a unit. */
    private static Pattern besideUnit(Collection<Fact> facts) {
        String units = facts.stream()
                .map(fact -> firstWord(fact.unit()))
                .filter(unit -> !unit.isEmpty())
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .map(unit -> Pattern.quote(unit) + (unit.endsWith("s") ? "?" : ""))
                .collect(Collectors.joining("|"));
        return Pattern.compile(
                "(" + NUMBER.pattern() + ")(?: to (" + NUMBER.pattern() + "))?[ -](" + units + ")(?!\\w)");
    }

    private static void check(
            Passage passage, Pattern beside, Collection<Fact> facts, List<Named> named, Findings findings) {
        List<String> done = new ArrayList<>();
        Matcher matcher = beside.matcher(passage.text());
        while (matcher.find()) {
            String number = matcher.group(1);
            String unit = matcher.group(3);
            done.add(number);
            Optional<Fact> same = facts.stream()
                    .filter(fact -> sameUnit(fact, unit)
                            && (fact.low().equals(number) || fact.high().equals(number)))
                    .findFirst();
            if (same.isPresent()) {
                found(passage, matcher.group(), same.get(), findings);
            } else {
                findings.warn(
                        Rule.TRUTH_NUMBER,
                        passage.at(),
                        "the number '" + matcher.group() + "' stands in the text",
                        "if a source gives it, move it to facts.md and write its {fact.id}");
            }
        }
        for (String sentence : Sentences.of(passage.text().toLowerCase(Locale.ROOT))) {
            Matcher numbers = NUMBER.matcher(sentence);
            while (numbers.find()) {
                String number = numbers.group();
                if (!done.contains(number)) {
                    named.stream()
                            .filter(each -> each.fact().low().equals(number)
                                    || each.fact().high().equals(number))
                            .filter(each -> each.pattern().matcher(sentence).find())
                            .forEach(each -> found(passage, number, each.fact(), findings));
                }
            }
        }
    }

    private static void found(Passage passage, String number, Fact fact, Findings findings) {
        findings.error(
                Rule.TRUTH_NUMBER,
                passage.at(),
                "the number '" + number + "' stands in the text and in facts.md",
                "write {fact." + fact.id() + "}");
    }

    private static boolean sameUnit(Fact fact, String unit) {
        String first = firstWord(fact.unit());
        return first.equals(unit) || first.equals(unit + "s");
    }

    private static String firstWord(String unit) {
        int end = unit.indexOf(' ');
        return end < 0 ? unit : unit.substring(0, end);
    }
}
