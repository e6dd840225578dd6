package hutchleaf.content;

import hutchleaf.model.Inline;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the blanks in a text, {@code {rabbit.eye colour}}, and knows the fixed list of their names. */
final class Blanks {
    /** Every blank but those for facts, whose ids stand in {@code facts.md}. */
    static final List<String> NAMES = List.of(
            "club.name",
            "member.age",
            "member.division",
            "member.first name",
            "member.name",
            "rabbit.age",
            "rabbit.body type",
            "rabbit.breed",
            "rabbit.class",
            "rabbit.colour",
            "rabbit.ear carriage",
            "rabbit.ear number",
            "rabbit.eye colour",
            "rabbit.fur type",
            "rabbit.nail colour",
            "rabbit.name",
            "rabbit.pose",
            "rabbit.sex",
            "rabbit.variety",
            "rabbit.weight",
            "rabbit.weight class");

    /** What a blank for a fact starts with. */
    static final String FACT = "fact.";

    private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)\\}");

    private Blanks() {}

    /** The text as runs: plain text and blanks. */
    static List<Inline> split(String text, Place at, Quotes quotes, Problems problems) {
        List<Inline> runs = new ArrayList<>();
        Matcher braces = BRACES.matcher(text);
        int from = 0;
        while (braces.find()) {
            addText(runs, quotes.curl(text.substring(from, braces.start())));
            String name = braces.group(1);
            if (!name.startsWith(FACT) && !NAMES.contains(name)) {
                problems.add(at, "unknown blank '{" + name + "}'", NearMiss.mend(name, NAMES));
            }
            runs.add(new Inline.Blank(name));
            quotes.pass();
            from = braces.end();
        }
        addText(runs, quotes.curl(text.substring(from)));
        return runs;
    }

    private static void addText(List<Inline> runs, String text) {
        if (!text.isEmpty()) {
            runs.add(new Inline.Text(text));
        }
    }
}
