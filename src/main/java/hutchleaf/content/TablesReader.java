package hutchleaf.content;

import hutchleaf.model.Basis;
import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Fact;
import hutchleaf.model.LabelIt;
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
    private static final List<String> BREEDS = List.of(
            "breed",
            "body type",
            "pose",
            "ears",
            "fur",
            "classes",
            "senior buck",
            "senior doe",
            "say",
            "judges look for",
            "colours",
            "sources",
            "unsure");
    private static final List<String> COLOURS =
            List.of("colour", "group", "eye", "nails", "look", "not to be confused with", "sources", "unsure");
    private static final List<String> LABEL_IT = List.of("figure", "title", "from");

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
                    new Breed.Showing(row.text("say"), row.text("judges look for")),
                    row.list("colours"),
                    basis(row, BREEDS, problems)));
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
                    row.text("look"),
                    row.text("not to be confused with"),
                    basis(row, COLOURS, problems)));
        }
        return colours;
    }

    static List<LabelIt> labelIt(MarkdownFile file, Problems problems) {
        return DataFile.table(file, 0, LABEL_IT, problems).stream()
                .map(row -> new LabelIt(row.need("figure"), row.need("title"), row.level("from"), row.at()))
                .toList();
    }

    private static Basis basis(Table.Row row, List<String> columns, Problems problems) {
        List<String> unsure = row.list("unsure");
        unsure.stream()
                .filter(name -> !columns.contains(name))
                .forEach(name -> problems.add(row.at(), "'unsure' names '" + name + "'", NearMiss.mend(name, columns)));
        return new Basis(row.list("sources"), unsure, row.at());
    }
}
