package hutchleaf.proof;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Levels;
import hutchleaf.model.Library;
import hutchleaf.model.Section;
import hutchleaf.model.SelfTestItem;
import hutchleaf.model.Term;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import hutchleaf.proof.Passage.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists every line of words in the tree, in the order of its topics. */
final class Passages {
    private final Topic topic;
    private final List<Passage> passages;

    private Passages(Topic topic, List<Passage> passages) {
        this.topic = topic;
        this.passages = passages;
    }

    static List<Passage> of(Library library) {
        List<Passage> passages = new ArrayList<>();
        library.topics().forEach(topic -> new Passages(topic, passages).read());
        new Passages(
                        lists(
                                "contest/packet.md",
                                "Packet",
                                library.contest().packet().sections()),
                        passages)
                .read();
        new Passages(
                        lists(
                                "contest/accommodation.md",
                                "Help",
                                library.contest().help().sections()),
                        passages)
                .read();
        return List.copyOf(passages);
    }

    /** The lists that packets and accommodations print, read like a topic. */
    private static Topic lists(String path, String title, List<Section> sections) {
        Place at = sections.isEmpty() ? Place.whole(path) : sections.get(0).at();
        return new Topic(
                new Topic.Head(
                        path,
                        title,
                        Levels.ALL,
                        Optional.empty(),
                        0,
                        new Topic.Credits(at, List.of(), Optional.empty())),
                sections,
                new Topic.Practice(List.of(), List.of(), List.of(), List.of()));
    }

    private void read() {
        Topic.Head head = topic.head();
        add(Role.TITLE, head.levels(), head.credits().at(), Words.of(head.title()));
        topic.sections().forEach(this::section);
        topic.practice().terms().forEach(this::term);
        topic.practice().cards().forEach(this::card);
        topic.practice().questions().forEach(this::question);
        topic.practice().selfTest().forEach(this::selfTest);
    }

    private void section(Section section) {
        Role role = switch (section.kind()) {
            case IN_SHORT -> Role.IN_SHORT;
            case STEPS -> Role.STEP;
            case CAUTION -> Role.CAUTION;
            case SAY_IT -> Role.SAY_IT;
            case IF_YOU_FIND_IT -> Role.IF_YOU_FIND_IT;
            case OFTEN_MISSED -> Role.OFTEN_MISSED;
            case SEE_IT, LOOK_FOR, PROSE -> Role.PROSE;
        };
        add(Role.HEADING, section.levels(), section.at(), Words.of(section.heading()));
        section.blocks().forEach(block -> block(block, role, section.levels()));
    }

    private void block(Block block, Role role, Levels levels) {
        if (block instanceof Block.Paragraph paragraph) {
            add(role, levels, paragraph.at(), paragraph.text());
        } else if (block instanceof Block.Bullets list) {
            list.items().forEach(item -> add(role, levels, item.at(), item.text()));
        } else if (block instanceof Block.Numbered list) {
            list.items().forEach(item -> add(Role.STEP, levels, item.at(), item.text()));
        } else if (block instanceof Block.Table table) {
            table.head().forEach(cell -> add(Role.HEAD_CELL, levels, table.at(), cell));
            table.rows().forEach(row -> row.cells().forEach(cell -> add(Role.CELL, levels, row.at(), cell)));
        } else if (block instanceof Block.Picture picture) {
            picture(picture, levels);
        }
    }

    private void picture(Block.Picture picture, Levels levels) {
        add(Role.CAPTION, levels, picture.at(), Words.of(picture.caption()));
        add(Role.ALT, levels, picture.at(), Words.of(picture.alt()));
    }

    private void term(Term term) {
        add(Role.TERM, term.levels(), term.at(), Words.of(term.term()));
        add(Role.MEANING, term.levels(), term.at(), term.meaning());
    }

    private void card(Card card) {
        add(Role.QUESTION, card.levels(), card.at(), card.question());
        card.picture().ifPresent(picture -> picture(picture, card.levels()));
        add(Role.ANSWER, card.levels(), card.at(), card.answer());
    }

    private void question(JudgeQuestion question) {
        add(Role.JUDGE_QUESTION, question.levels(), question.at(), question.question());
        question.points().forEach(point -> add(Role.POINT, question.levels(), question.at(), point));
    }

    private void selfTest(SelfTestItem item) {
        add(Role.SELF_TEST, item.levels(), item.at(), item.question());
        item.words()
                .filter(words -> !words.equals(item.question()) && !words.equals(item.why()))
                .forEach(words -> add(Role.CHOICE, item.levels(), item.at(), words));
        add(Role.WHY, item.levels(), item.at(), item.why());
    }

    private void add(Role role, Levels levels, Place at, Words words) {
        passages.add(new Passage(topic, role, levels, at, words));
    }
}
