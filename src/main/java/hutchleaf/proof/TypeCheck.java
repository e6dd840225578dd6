package hutchleaf.proof;

import hutchleaf.model.Block;
import hutchleaf.model.Breed;
import hutchleaf.model.Section;
import hutchleaf.model.Subject;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A breed that the texts give as an example of a body type or a fur type has that type in the breed table. Read are the
 * sections "Breeds" of a body type's topic, and tables with a row or a column of breeds. Cells the breed table is unsure
 * of are passed over.
 */
final class TypeCheck implements Check {
    private static final String BREEDS = "breeds";

    private record Kind(String column, Function<Breed, String> value, Set<String> names) {
        boolean sure(Breed breed) {
            return breed.basis().sure(column);
        }
    }

    @Override
    public void check(Material material, Findings findings) {
        List<Breed> breeds = material.library().tables().breeds();
        List<Kind> kinds = List.of(
                new Kind("body type", Breed::bodyType, names(breeds, Breed::bodyType)),
                new Kind("fur", Breed::fur, names(breeds, Breed::fur)));
        for (Topic topic : material.library().topics()) {
            for (Section section : topic.sections()) {
                for (Kind kind : kinds) {
                    examples(topic, section, kind).forEach(example -> check(example, kind, breeds, findings));
                }
            }
        }
    }

    private record Example(String type, Words text, Place at) {}

    private static List<Example> examples(Topic topic, Section section, Kind kind) {
        List<Example> examples = new ArrayList<>();
        String title = topic.head().title().toLowerCase(Locale.ROOT);
        boolean own =
                topic.head().subject() == Subject.BODY_TYPES && kind.names().contains(title);
        for (Block block : section.blocks()) {
            if (block instanceof Block.Table table) {
                examples.addAll(rows(table, kind));
                examples.addAll(columns(table, kind));
            } else if (own && section.heading().toLowerCase(Locale.ROOT).startsWith(BREEDS)) {
                block.words().forEach(words -> examples.add(new Example(title, words, block.at())));
            }
        }
        return examples;
    }

    /** A table with the types down the side and a column of breeds. */
    private static List<Example> rows(Block.Table table, Kind kind) {
        List<String> head = table.head().stream().map(TypeCheck::lower).toList();
        int column = head.indexOf(BREEDS);
        if (column < 0) {
            return List.of();
        }
        return table.rows().stream()
                .filter(row -> column < row.cells().size()
                        && kind.names().contains(lower(row.cells().get(0))))
                .map(row -> new Example(lower(row.cells().get(0)), row.cells().get(column), row.at()))
                .toList();
    }

    /** A table with the types along the top and a row of breeds. */
    private static List<Example> columns(Block.Table table, Kind kind) {
        List<Example> examples = new ArrayList<>();
        table.rows().stream()
                .filter(row ->
                        !row.cells().isEmpty() && lower(row.cells().get(0)).equals(BREEDS))
                .forEach(row -> {
                    for (int i = 1;
                            i < Math.min(row.cells().size(), table.head().size());
                            i++) {
                        String type = lower(table.head().get(i));
                        if (kind.names().contains(type)) {
                            examples.add(new Example(type, row.cells().get(i), row.at()));
                        }
                    }
                });
        return examples;
    }

    private static void check(Example example, Kind kind, List<Breed> breeds, Findings findings) {
        named(example.text().plain(), breeds).values().stream()
                .filter(kind::sure)
                .filter(breed -> !kind.value().apply(breed).equals(example.type()))
                .forEach(breed -> findings.error(
                        Rule.TRUTH_TYPE,
                        example.at(),
                        "the " + breed.name() + " stands under '" + example.type() + "', but its " + kind.column()
                                + " is '" + kind.value().apply(breed) + "' at "
                                + breed.basis().at(),
                        "mend the one that is wrong"));
    }

    /** Breeds a text names; Mini Rex is not Rex. */
    private static Map<String, Breed> named(String text, List<Breed> breeds) {
        Map<String, Breed> named = new LinkedHashMap<>();
        String rest = text;
        List<Breed> longestFirst = breeds.stream()
                .sorted(Comparator.comparing((Breed breed) -> breed.name().length())
                        .reversed())
                .toList();
        for (Breed breed : longestFirst) {
            String without = rest.replaceAll("\\b" + Pattern.quote(breed.name()) + "s?\\b", "-");
            if (!without.equals(rest)) {
                named.put(breed.name(), breed);
                rest = without;
            }
        }
        return named;
    }

    private static Set<String> names(List<Breed> breeds, Function<Breed, String> value) {
        return breeds.stream().map(value).collect(Collectors.toSet());
    }

    private static String lower(Words words) {
        return words.plain().strip().toLowerCase(Locale.ROOT);
    }
}
