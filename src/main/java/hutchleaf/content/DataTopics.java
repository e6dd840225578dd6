package hutchleaf.content;

import hutchleaf.model.Basis;
import hutchleaf.model.Block;
import hutchleaf.model.Breed;
import hutchleaf.model.Colour;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Section;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the topics that print the tables of breeds and colours. A cell that is not sure is printed as a sign. */
final class DataTopics {
    /** Printed where the table does not know for sure. */
    static final String SIGN = "?";

    private static final String EXPLAINED = "A ? means: check your breed standard.";
    /** Authors give lower codes to their topics. */
    static final int FIRST_CODE = 990;

    private static final Levels FROM_JUNIOR = new Levels(Level.JUNIOR, Level.SENIOR);
    private static final Levels FROM_INTERMEDIATE = new Levels(Level.INTERMEDIATE, Level.SENIOR);
    private static final Levels SENIOR = new Levels(Level.SENIOR, Level.SENIOR);

    private DataTopics() {}

    static List<Topic> of(List<Breed> breeds, List<Colour> colours) {
        List<Topic> topics = new ArrayList<>();
        if (!breeds.isEmpty()) {
            topics.add(glance(breeds));
            topics.add(entries(breeds));
        }
        if (!colours.isEmpty()) {
            topics.add(colours(colours));
        }
        return topics;
    }

    /** A breed whose body, fur and classes all rest on memory is not printed. */
    private static boolean printed(Breed breed) {
        return Stream.of("body type", "fur", "classes").anyMatch(breed.basis()::sure);
    }

    private static Topic glance(List<Breed> breeds) {
        List<Breed> shown = breeds.stream().filter(DataTopics::printed).toList();
        Place at = breeds.get(0).basis().at();
        List<Section> sections = new ArrayList<>();
        sections.add(prose(
                Section.Kind.IN_SHORT,
                "In short",
                FROM_JUNIOR,
                paragraph(
                        at,
                        "Find your breed. Weights are for senior rabbits, in pounds. " + EXPLAINED
                                + " Your breed standard decides.")));
        sections.add(prose(
                Section.Kind.PROSE,
                "All breeds",
                FROM_JUNIOR,
                table(
                        at,
                        List.of("Breed", "Body type", "Ears, fur", "Classes", "Buck", "Doe"),
                        shown.stream()
                                .map(breed -> row(
                                        breed.basis().at(),
                                        breed.name(),
                                        sure(breed, "body type", breed.bodyType()),
                                        sure(breed, "ears", breed.ears()) + ", " + sure(breed, "fur", breed.fur()),
                                        sure(breed, "classes", String.valueOf(breed.classes())),
                                        sure(
                                                breed,
                                                "senior buck",
                                                breed.weights().buck()),
                                        sure(
                                                breed,
                                                "senior doe",
                                                breed.weights().doe())))
                                .toList())));
        String left = breeds.stream()
                .filter(breed -> !printed(breed))
                .map(Breed::name)
                .collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            sections.add(prose(
                    Section.Kind.PROSE,
                    "Left out",
                    FROM_JUNIOR,
                    paragraph(at, left + ": we could not check these. Ask your breed\u2019s club.")));
        }
        return topic(
                "breeds/breeds-at-a-glance.md",
                "Breeds at a glance",
                FROM_JUNIOR,
                FIRST_CODE,
                at,
                sources(breeds, Breed::basis),
                sections);
    }

    private static Topic entries(List<Breed> breeds) {
        Place at = breeds.get(0).basis().at();
        List<Section> sections = new ArrayList<>();
        sections.add(prose(
                Section.Kind.IN_SHORT,
                "In short",
                SENIOR,
                paragraph(at, "What to say and what judges look for. " + EXPLAINED)));
        breeds.stream().filter(DataTopics::printed).forEach(breed -> sections.add(entry(breed)));
        return topic(
                "breeds/every-breed.md",
                "Every breed",
                SENIOR,
                FIRST_CODE + 1,
                at,
                sources(breeds, Breed::basis),
                sections);
    }

    private static Section entry(Breed breed) {
        Place at = breed.basis().at();
        String weights = breed.weights().buck().isEmpty()
                        && breed.weights().doe().isEmpty()
                ? "weights: check your breed standard"
                : "senior bucks " + sure(breed, "senior buck", breed.weights().buck()) + ", does "
                        + sure(breed, "senior doe", breed.weights().doe()) + " pounds";
        List<Block> blocks = new ArrayList<>();
        blocks.add(paragraph(
                at,
                first(sure(breed, "body type", breed.bodyType())) + "; " + sure(breed, "pose", breed.pose()) + "; "
                        + sure(breed, "ears", breed.ears()) + " ears; " + sure(breed, "fur", breed.fur()) + " fur; "
                        + sure(breed, "classes", String.valueOf(breed.classes())) + " classes; " + weights + "."));
        if (!breed.showing().say().isEmpty() && breed.basis().sure("say")) {
            blocks.add(paragraph(at, "Say: " + breed.showing().say()));
        }
        if (!breed.showing().judgesLookFor().isEmpty() && breed.basis().sure("judges look for")) {
            blocks.add(paragraph(at, "Judges look for " + breed.showing().judgesLookFor()));
        }
        return new Section(Section.Kind.PROSE, breed.name(), SENIOR, at, blocks);
    }

    private static Topic colours(List<Colour> colours) {
        Place at = colours.get(0).basis().at();
        Map<String, List<Colour>> groups = new LinkedHashMap<>();
        for (Colour colour : colours) {
            groups.computeIfAbsent(colour.basis().sure("group") ? colour.group() : SIGN, group -> new ArrayList<>())
                    .add(colour);
        }
        List<Section> sections = new ArrayList<>();
        sections.add(prose(
                Section.Kind.IN_SHORT,
                "In short",
                FROM_INTERMEDIATE,
                paragraph(at, "Colours by group. " + EXPLAINED + " Groups differ from breed to breed.")));
        groups.forEach((group, members) -> sections.add(prose(
                Section.Kind.PROSE,
                group.equals(SIGN) ? "Group not checked" : first(group),
                FROM_INTERMEDIATE,
                table(
                        at,
                        List.of("Colour", "What you see", "Eye", "Nails", "Not to be confused with"),
                        members.stream()
                                .map(colour -> row(
                                        colour.basis().at(),
                                        colour.name(),
                                        sure(colour, "look", colour.look()),
                                        sure(colour, "eye", colour.eye()),
                                        sure(colour, "nails", colour.nails()),
                                        colour.confusedWith()))
                                .toList()))));
        return topic(
                "colours/colours-by-group.md",
                "Colours by group",
                FROM_INTERMEDIATE,
                FIRST_CODE + 2,
                at,
                sources(colours, Colour::basis),
                sections);
    }

    private static String sure(Breed breed, String column, String text) {
        return text.isEmpty() || !breed.basis().sure(column) ? SIGN : text;
    }

    private static String sure(Colour colour, String column, String text) {
        return text.isEmpty() || !colour.basis().sure(column) ? SIGN : text;
    }

    private static String first(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static <T> List<String> sources(List<T> rows, Function<T, Basis> basis) {
        return rows.stream()
                .flatMap(row -> basis.apply(row).sources().stream())
                .distinct()
                .sorted()
                .toList();
    }

    private static Topic topic(
            String path,
            String title,
            Levels levels,
            int code,
            Place at,
            List<String> sources,
            List<Section> sections) {
        Topic.Credits credits = new Topic.Credits(Place.whole(at.file()), sources, Optional.empty());
        return new Topic(
                new Topic.Head(path, title, levels, Optional.empty(), code, credits),
                sections,
                new Topic.Practice(List.of(), List.of(), List.of(), List.of()));
    }

    private static Section prose(Section.Kind kind, String heading, Levels levels, Block block) {
        return new Section(kind, heading, levels, block.at(), List.of(block));
    }

    private static Block paragraph(Place at, String text) {
        return new Block.Paragraph(at, Words.of(text));
    }

    private static Block table(Place at, List<String> head, List<Block.Table.Row> rows) {
        return new Block.Table(at, head.stream().map(Words::of).toList(), rows);
    }

    private static Block.Table.Row row(Place at, String... cells) {
        return new Block.Table.Row(at, Stream.of(cells).map(Words::of).toList());
    }
}
