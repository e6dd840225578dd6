package hutchleaf.proof;

import hutchleaf.model.DivisionRule;
import hutchleaf.model.Fact;
import hutchleaf.model.Library;
import hutchleaf.model.Source;
import hutchleaf.model.Topic;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Every topic says what it stands on, every source named is in {@code sources.md}, and every source there is used. */
final class SourceCheck implements Check {
    private static final String COMMON_PRACTICE = "common practice";

    @Override
    public void check(Material material, Findings findings) {
        Library library = material.library();
        Set<String> used = new HashSet<>();
        for (Topic topic : library.topics()) {
            Topic.Credits credits = topic.head().credits();
            used.addAll(credits.sources());
            if (credits.sources().isEmpty()) {
                findings.error(
                        Rule.SOURCE_NONE,
                        credits.at(),
                        "the topic names no source",
                        "add sources: with ids of sources.md, or common practice");
            }
        }
        for (Fact fact : library.tables().facts().values()) {
            used.addAll(fact.sources());
            if (fact.sources().isEmpty()) {
                findings.error(Rule.SOURCE_NONE, fact.at(), "the fact '" + fact.id() + "' names no source", "add one");
            }
            known(library, fact.sources(), fact.at(), findings);
        }
        for (DivisionRule rule : library.contest().divisions()) {
            used.addAll(rule.terms().sources());
            known(library, rule.terms().sources(), rule.terms().at(), findings);
        }
        for (Source source : library.tables().sources().values()) {
            if (!used.contains(source.id())) {
                findings.error(
                        Rule.SOURCE_UNUSED,
                        source.at(),
                        "nothing names the source '" + source.id() + "'",
                        "name it where it is used, or take it out");
            }
        }
    }

    private static void known(Library library, List<String> sources, Place at, Findings findings) {
        Set<String> ids = library.tables().sources().keySet();
        sources.stream()
                .filter(source -> !source.equals(COMMON_PRACTICE) && !ids.contains(source))
                .forEach(source -> findings.error(
                        Rule.SOURCE_UNKNOWN,
                        at,
                        "unknown source '" + source + "'",
                        NearMiss.of(source, ids)
                                .map(near -> "did you mean '" + near + "'?")
                                .orElse("add it to sources.md, or write common practice")));
    }
}
