package hutchleaf.content;

import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Fact;
import hutchleaf.model.Source;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the tables of data: facts, sources, breeds, colours, and the codes of cards that are no longer used. */
final class TablesReader {
    private static final List<String> FACTS = List.of("id", "low", "high", "unit", "source");
    private static final List<String> SOURCES = List.of("id", "title", "publisher", "year", "from memory");
    private static final List<String> BREEDS =
            List.of("breed", "body type", "pose", "ears", "fur", "classes", "senior buck", "senior doe", "unsure");
    private static final List<String> COLOURS = List.of("colour", "group", "eye", "nails", "unsure");

    private TablesReader() {}

    static Map<String, Fact> facts(MarkdownFile file, Problems problems) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (Table.Row row : DataFile.table(file, 0, FACTS, problems)) {
            Fact fact = new Fact(
                    row.need("id"), row.need("low"), row.need("high"), row.text("unit"), row.list("source"), row.at());
            if (facts.putIfAbsent(fact.id(), fact) != null) {
                problems.add(row.at(), "the fact '" + fact.id() + "' stands twice", "keep one row");
            }
        }
        return facts;
    }

    static Map<String, Source> sources(MarkdownFile file, Problems problems) {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (Table.Row row : DataFile.table(file, 0, SOURCES, problems)) {
            Source source = new Source(
                    row.need("id"),
                    row.need("title"),
                    row.need("publisher"),
                    row.need("year"),
                    row.oneOf("from memory", List.of("yes", "no")).equals("yes"),
                    row.at());
            if (sources.putIfAbsent(source.id(), source) != null) {
                problems.add(row.at(), "the source '" + source.id() + "' stands twice", "keep one row");
            }
        }
        return sources;
    }

    static List<Breed> breeds(MarkdownFile file, Problems problems) {
        List<Breed> breeds = new ArrayList<>();
        for (Table.Row row : DataFile.table(file, 0, BREEDS, problems)) {
            breeds.add(new Breed(
                    row.need("breed"),
                    row.need("body type"),
                    row.need("pose"),
                    row.need("ears"),
                    row.need("fur"),
                    row.oneOf("classes", List.of("4", "6")).equals("6") ? 6 : 4,
                    new Breed.Weights(row.text("senior buck"), row.text("senior doe")),
                    unsure(row, BREEDS, problems),
                    row.at()));
        }
        return breeds;
    }

    static List<Colour> colours(MarkdownFile file, Problems problems) {
        List<Colour> colours = new ArrayList<>();
        for (Table.Row row : DataFile.table(file, 0, COLOURS, problems)) {
            colours.add(new Colour(
                    row.need("colour"),
                    row.need("group"),
                    row.need("eye"),
                    row.need("nails"),
                    unsure(row, COLOURS, problems),
                    row.at()));
        }
        return colours;
    }

    private static List<String> unsure(Table.Row row, List<String> columns, Problems problems) {
        List<String> named = row.list("unsure");
        named.stream()
                .filter(name -> !columns.contains(name))
                .forEach(name -> problems.add(row.at(), "'unsure' names '" + name + "'", NearMiss.mend(name, columns)));
        return named;
    }
}
