package hutchleaf.page;

import hutchleaf.edition.Leaf;
import hutchleaf.model.Block;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Words;
import hutchleaf.page.GuideView.BlockView;
import hutchleaf.page.GuideView.PictureView;
import hutchleaf.page.GuideView.SectionView;
import hutchleaf.page.GuideView.TableView;
import java.util.List;
import java.util.Optional;

/** Makes the views of blocks and sections. */
final class BlockViews {
    /** Letters of a heading that fit in a line of the rail at the largest body size. */
    private static final int RAIL_LETTERS = 13;

    /** Tables with more rows than this may break over pages. */
    private static final int MOST_ROWS_KEPT = 14;

    private static final int COLUMNS_BESIDE_THE_RAIL = 3;

    private final Markup markup;
    private final FigureViews figures;

    BlockViews(Markup markup, FigureViews figures) {
        this.markup = markup;
        this.figures = figures;
    }

    SectionView section(Section section) {
        return switch (section.kind()) {
            case CAUTION ->
                new SectionView(
                        "caution",
                        section.heading(),
                        1,
                        false,
                        List.of(),
                        Optional.of(markup.firstSentenceStrong(section.text())));
            case SEE_IT ->
                new SectionView(
                        "pictures",
                        section.heading(),
                        1,
                        false,
                        figures.row(section.pictures()).stream()
                                .map(BlockViews::pictureView)
                                .toList(),
                        Optional.empty());
            default ->
                new SectionView(
                        "prose",
                        section.heading(),
                        lines(section.heading(), RAIL_LETTERS),
                        rows(section) > MOST_ROWS_KEPT,
                        section.blocks().stream().map(this::block).toList(),
                        Optional.empty());
        };
    }

    /** The words of a section of a kind, when the leaf has it. */
    Optional<Xml> text(Leaf leaf, Kind kind) {
        return leaf.section(kind).map(Section::text).map(markup::write);
    }

    /** The questions a judge may ask, without their points. */
    List<Xml> questions(Leaf leaf) {
        return leaf.practice().questions().stream()
                .map(JudgeQuestion::question)
                .map(markup::write)
                .toList();
    }

    private static int rows(Section section) {
        return section.blocks().stream()
                .filter(Block.Table.class::isInstance)
                .mapToInt(block -> ((Block.Table) block).rows().size())
                .sum();
    }

    /** About how many lines a text takes. */
    static int lines(String text, int letters) {
        return 1 + (text.length() - 1) / letters;
    }

    BlockView block(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return new BlockView(
                    "paragraph",
                    Optional.of(markup.write(paragraph.text())),
                    List.of(),
                    Optional.empty(),
                    Optional.empty());
        } else if (block instanceof Block.Bullets bullets) {
            return items("bullets", bullets.words().toList());
        } else if (block instanceof Block.Numbered numbered) {
            return items("numbered", numbered.words().toList());
        } else if (block instanceof Block.Table table) {
            return new BlockView("table", Optional.empty(), List.of(), Optional.of(table(table, 0)), Optional.empty());
        }
        return new BlockView(
                "picture",
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.of(figures.row(List.of((Block.Picture) block)).get(0)));
    }

    private static BlockView pictureView(PictureView picture) {
        return new BlockView("picture", Optional.empty(), List.of(), Optional.empty(), Optional.of(picture));
    }

    private BlockView items(String kind, List<Words> items) {
        return new BlockView(kind, Optional.empty(), markup.writeAll(items), Optional.empty(), Optional.empty());
    }

    TableView table(Block.Table table, int strong) {
        return new TableView(
                markup.writeAll(table.head()),
                table.rows().stream().map(row -> markup.writeAll(row.cells())).toList(),
                table.head().size() > COLUMNS_BESIDE_THE_RAIL,
                strong);
    }
}
