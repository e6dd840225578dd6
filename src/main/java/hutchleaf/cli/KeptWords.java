package hutchleaf.cli;

import hutchleaf.model.Block;
import hutchleaf.model.Club;
import hutchleaf.model.Inline;
import hutchleaf.model.Member;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Words;
import hutchleaf.page.Spelled;
import java.util.List;

/** What a club wrote itself, marked so that no spelling changes it: names of all kinds, the letter, the grip. */
record KeptWords(Spelled spelled) {
    Club club(Club club) {
        Club.Show show = club.show();
        Club.Practice practice = club.practice();
        return new Club(
                spelled.kept(club.name()),
                new Club.Show(
                        spelled.kept(show.name()), show.date(), show.ruleSet(), show.countedOn(), show.leaveOut()),
                new Club.Practice(
                        practice.start(), practice.restDays(), practice.minutes(), spelled.kept(practice.grip())),
                club.print(),
                club.letter().stream().map(this::block).toList(),
                club.at());
    }

    Member member(Member member) {
        return new Member(
                spelled.kept(member.name()),
                member.born(),
                member.years(),
                member.division(),
                member.study(),
                member.firstYear(),
                member.lastYear(),
                member.needs(),
                member.rabbits().stream().map(this::rabbit).toList(),
                member.at());
    }

    private Rabbit rabbit(Rabbit rabbit) {
        return new Rabbit(
                spelled.kept(rabbit.name()),
                rabbit.breed(),
                rabbit.coat(),
                rabbit.sex(),
                rabbit.born(),
                spelled.kept(rabbit.earNumber()),
                rabbit.weight(),
                rabbit.at());
    }

    private Block block(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return new Block.Paragraph(paragraph.at(), words(paragraph.text()));
        } else if (block instanceof Block.Bullets bullets) {
            return new Block.Bullets(bullets.at(), items(bullets.items()));
        } else if (block instanceof Block.Numbered numbered) {
            return new Block.Numbered(numbered.at(), items(numbered.items()));
        } else if (block instanceof Block.Table table) {
            return new Block.Table(
                    table.at(),
                    table.head().stream().map(this::words).toList(),
                    table.rows().stream()
                            .map(row -> new Block.Table.Row(
                                    row.at(),
                                    row.cells().stream().map(this::words).toList()))
                            .toList());
        }
        Block.Picture picture = (Block.Picture) block;
        return new Block.Picture(
                picture.at(),
                picture.file(),
                picture.use(),
                spelled.kept(picture.alt()),
                spelled.kept(picture.caption()));
    }

    private List<Block.Item> items(List<Block.Item> items) {
        return items.stream()
                .map(item -> new Block.Item(item.at(), words(item.text())))
                .toList();
    }

    private Words words(Words words) {
        return new Words(runs(words.runs()));
    }

    private List<Inline> runs(List<Inline> runs) {
        return runs.stream().map(this::run).toList();
    }

    private Inline run(Inline run) {
        if (run instanceof Inline.Text text) {
            return new Inline.Text(spelled.kept(text.text()));
        } else if (run instanceof Inline.Strong strong) {
            return new Inline.Strong(runs(strong.inside()));
        } else if (run instanceof Inline.Emphasis emphasis) {
            return new Inline.Emphasis(runs(emphasis.inside()));
        } else if (run instanceof Inline.Link link) {
            return new Inline.Link(link.topic(), runs(link.inside()));
        }
        return run;
    }
}
