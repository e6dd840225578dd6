package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.Inline;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Library;
import hutchleaf.model.Section;
import hutchleaf.model.SelfTestItem;
import hutchleaf.model.Term;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What one file became in the library, as lines that a person reads and a spec table quotes. */
final class ModelDump {
    private static final Inline.Cases<String> INLINE = new Inline.Cases<>() {
        @Override
        public String text(Inline.Text text) {
            return text.text();
        }

        @Override
        public String strong(Inline.Strong strong) {
            return "**" + runs(strong.inside()) + "**";
        }

        @Override
        public String emphasis(Inline.Emphasis emphasis) {
            return "*" + runs(emphasis.inside()) + "*";
        }

        @Override
        public String link(Inline.Link link) {
            return "[" + runs(link.inside()) + "](" + link.topic() + ")";
        }

        @Override
        public String blank(Inline.Blank blank) {
            return "{" + blank.name() + "}";
        }
    };

    private ModelDump() {}

    static List<String> of(Library library, String path) {
        return switch (path) {
            case "facts.md" ->
                library.tables().facts().values().stream()
                        .map(fact -> "fact " + fact.id() + ": " + fact.printed() + " by " + fact.sources())
                        .sorted()
                        .toList();
            case "sources.md" ->
                library.tables().sources().values().stream()
                        .map(source -> "source " + source.id() + ": " + source.title() + ", " + source.publisher()
                                + ", " + source.year() + (source.fromMemory() ? ", from memory" : ", seen"))
                        .sorted()
                        .toList();
            case "breeds/breeds.md" ->
                library.tables().breeds().stream()
                        .map(breed -> "breed " + breed.name() + ": " + breed.bodyType() + ", " + breed.fur() + ", "
                                + breed.classes() + " classes, colours " + breed.colours() + ", unsure "
                                + breed.basis().unsure())
                        .toList();
            case "colours/colours.md" ->
                library.tables().colours().stream()
                        .map(colour -> "colour " + colour.name() + ": " + colour.group() + ", eye " + colour.eye()
                                + ", nails " + colour.nails() + ", unsure "
                                + colour.basis().unsure())
                        .toList();
            case "contest/scoresheet.md" ->
                library.contest().scoreSheets().stream()
                        .map(sheet -> "score sheet " + sheet.level().word() + ": hands " + sheet.hands() + ", voice "
                                + sheet.voice() + ", all through " + sheet.allThrough() + ", total " + sheet.total())
                        .toList();
            case "contest/questions.md" ->
                library.contest().blueprint().kinds().stream()
                        .map(kind -> "kind " + kind.name() + ": " + kind.count() + " from " + kind.subjects())
                        .toList();
            case "contest/went-well.md" ->
                List.of("slip " + library.contest().wentWell().title() + ": "
                        + all(library.contest().wentWell().ticks()));
            case "contest/divisions.md" ->
                library.contest().divisions().stream()
                        .map(rule -> "division " + rule.division() + " ("
                                + rule.level().word() + ") by " + rule.by()
                                + " from " + rule.from().map(String::valueOf).orElse("open") + " to "
                                + rule.to().map(String::valueOf).orElse("open")
                                + (rule.terms().competes() ? ", competes" : ", not placed"))
                        .toList();
            default ->
                path.endsWith(".svg")
                        ? Stream.ofNullable(library.tables().drawings().get(path))
                                .map(drawing -> "drawing " + drawing.file() + ": width by height " + drawing.ratio())
                                .toList()
                        : library.topic(path).map(ModelDump::topic).orElse(List.of());
        };
    }

    private static List<String> topic(Topic topic) {
        List<String> lines = new ArrayList<>();
        Topic.Head head = topic.head();
        lines.add("topic " + head.path() + " '" + head.title() + "' " + head.levels() + " code " + head.code()
                + head.station().map(stop -> " station " + stop).orElse("")
                + head.credits().breed().map(breed -> " breed " + breed).orElse("")
                + (head.credits().sources().isEmpty()
                        ? ""
                        : " sources " + head.credits().sources()));
        topic.sections().forEach(section -> lines.add(section(section)));
        topic.practice().terms().forEach(term -> lines.add(term(term)));
        topic.practice().cards().forEach(card -> lines.add(card(card)));
        topic.practice().questions().forEach(question -> lines.add(question(question)));
        topic.practice().selfTest().forEach(item -> lines.add(selfTest(item)));
        return lines;
    }

    private static String section(Section section) {
        String name = section.kind() == Section.Kind.PROSE ? "prose " : "section ";
        return name + section.heading() + " (" + section.levels() + "): "
                + section.blocks().stream().map(ModelDump::block).collect(Collectors.joining(" / "));
    }

    private static String block(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return words(paragraph.text());
        } else if (block instanceof Block.Bullets bullets) {
            return "bullets: " + all(bullets.words().toList());
        } else if (block instanceof Block.Numbered numbered) {
            return "numbered: " + all(numbered.words().toList());
        } else if (block instanceof Block.Table table) {
            return "table: " + all(table.head()) + " // "
                    + table.rows().stream().map(row -> all(row.cells())).collect(Collectors.joining(" // "));
        }
        Block.Picture picture = (Block.Picture) block;
        return "picture " + picture.file() + " '" + picture.alt() + "' '" + picture.caption() + "'";
    }

    private static String term(Term term) {
        return "term " + term.term() + " (" + term.levels() + "): " + words(term.meaning());
    }

    private static String card(Card card) {
        return "card " + card.code() + (card.need() == Card.Need.CORE ? " core" : "") + " (" + card.levels() + "): "
                + words(card.question()) + " | "
                + card.picture().map(picture -> block(picture) + " | ").orElse("") + words(card.answer());
    }

    private static String question(JudgeQuestion question) {
        return "question (" + question.levels() + ") any " + question.enough() + " of "
                + question.points().size()
                + (question.about() == JudgeQuestion.About.OWN_RABBIT ? " own rabbit" : "") + ": "
                + words(question.question()) + " | " + all(question.points());
    }

    private static String selfTest(SelfTestItem item) {
        String start = " (" + item.levels() + "): " + words(item.question()) + " | ";
        String why = " | because " + words(item.why());
        if (item instanceof SelfTestItem.TickOne tick) {
            String choices = IntStream.range(0, tick.choices().size())
                    .mapToObj(index -> (index == tick.right() ? "right " : "")
                            + words(tick.choices().get(index)))
                    .collect(Collectors.joining(" | "));
            return "self-test tick" + start + choices + why;
        } else if (item instanceof SelfTestItem.Gap gap) {
            return "self-test gap" + start + words(gap.answer()) + why;
        }
        return "self-test aloud" + start + all(((SelfTestItem.Aloud) item).points()) + why;
    }

    private static String all(List<Words> lines) {
        return lines.stream().map(ModelDump::words).collect(Collectors.joining(" | "));
    }

    private static String words(Words words) {
        return runs(words.runs());
    }

    private static String runs(List<Inline> runs) {
        return runs.stream().map(run -> run.match(INLINE)).collect(Collectors.joining());
    }
}
