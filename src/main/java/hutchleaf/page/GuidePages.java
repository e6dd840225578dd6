package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.model.Block;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.Fact;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Setting;
import hutchleaf.model.Station;
import hutchleaf.model.Station.SideUp;
import hutchleaf.model.Subject;
import hutchleaf.model.Term;
import hutchleaf.page.GuideView.Asked;
import hutchleaf.page.GuideView.AskedGroup;
import hutchleaf.page.GuideView.RoutineRow;
import hutchleaf.page.GuideView.TopicView;
import hutchleaf.page.GuideView.WordView;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the view of a study guide from an edition. */
final class GuidePages {
    private static final int TERM_LETTERS = 16;

    private static final int ROWS_OF_A_PAGE = 30;

    /** The topic that stands before the routine in every guide. */
    static final String SAFETY = "handling/before-you-start.md";

    private final Edition edition;
    private final Markup markup;
    private final Look look;
    private final FigureViews figures;
    private final BlockViews blocks;

    private GuidePages(Edition edition, Paper paper, Setting setting) {
        this.edition = edition;
        this.markup = new Markup(this::anchor, this::filling);
        this.look = Look.of(edition.level(), paper, setting);
        this.figures = new FigureViews(edition.library().tables().drawings(), edition.level(), look);
        this.blocks = new BlockViews(markup, figures);
    }

    /**
     * The view of a guide.
     *
     * @param club whose name stands on the cover
     */
    static GuideView of(Edition edition, Paper paper, String club, Setting setting) {
        return new GuidePages(edition, paper, setting).view(club);
    }

    /** Writes words for an edition without a rabbit or a member of its own. */
    static Markup markup(Edition edition) {
        return new GuidePages(edition, Paper.LETTER, Setting.ORDINARY).markup;
    }

    private Optional<String> anchor(String path) {
        return edition.all()
                .filter(leaf -> leaf.head().path().equals(path))
                .map(leaf -> leaf.head().anchor())
                .findFirst();
    }

    private Optional<String> filling(String blank) {
        return blank.startsWith("fact.")
                ? Optional.ofNullable(edition.library().tables().facts().get(blank.substring("fact.".length())))
                        .map(Fact::printed)
                : Optional.empty();
    }

    private GuideView view(String club) {
        List<TopicView> topics = new ArrayList<>();
        for (Subject subject : Subject.values()) {
            List<Leaf> leaves = printed(edition, subject);
            for (int index = 0; index < leaves.size(); index++) {
                Leaf leaf = leaves.get(index);
                topics.add(topic(leaf, index == 0 || fillsPages(leaf)));
            }
        }
        GuideView.Cover cover = cover(club);
        List<GuideView.StopView> stops = new StopPages(edition, markup, blocks, figures).views();
        return new GuideView(
                look,
                figures.sizes(),
                cover,
                ContentsPage.of(edition, !sources().isEmpty()),
                stops,
                topics,
                new GuideView.Back(asked(), SelfTestPages.of(edition, markup), words(edition.terms()), sources()));
    }

    /** The topics of a subject that stand among the topics; the one on safety stands before the routine. */
    static List<Leaf> printed(Edition edition, Subject subject) {
        return edition.leaves(subject).stream()
                .filter(leaf -> !leaf.head().path().equals(SAFETY))
                .toList();
    }

    /** Whether a topic holds a table of more than a page, which starts on one. */
    private static boolean fillsPages(Leaf leaf) {
        return leaf.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Table.class::isInstance)
                .anyMatch(table -> ((Block.Table) table).rows().size() > ROWS_OF_A_PAGE);
    }

    private GuideView.Cover cover(String club) {
        return new GuideView.Cover(
                club,
                edition.division().map(GuidePages::band).orElse(""),
                routine(edition),
                edition.leaves().stream()
                        .filter(leaf -> leaf.head().path().equals(SAFETY))
                        .map(leaf -> topic(leaf, true))
                        .findFirst(),
                Arrays.stream(Level.values())
                        .map(level -> new GuideView.Mark(level.blackToes(), level.title()))
                        .toList());
    }

    /** Whom the cover speaks of: {@code Members aged 8 to 10}. */
    static String band(DivisionRule rule) {
        String what = rule.by() == DivisionRule.By.GRADE ? "Members in grades " : "Members aged ";
        String from = rule.from().map(String::valueOf).orElse("");
        String to = rule.to().map(String::valueOf).orElse("");
        if (to.isEmpty()) {
            return what + from + " and over";
        }
        return from.isEmpty() ? what + "up to " + to : what + from + " to " + to;
    }

    /** The whole routine as a level does it, a row a stop. */
    static List<RoutineRow> routine(Edition edition) {
        List<RoutineRow> rows = new ArrayList<>();
        List<Integer> shown = edition.order().stops();
        boolean turned = shown.contains(5);
        List<Station> stations = edition.library().routine().stations().stream()
                .filter(station -> turned || shown.contains(station.no()))
                .toList();
        for (int index = 0; index < stations.size(); index++) {
            Station station = stations.get(index);
            boolean back = turned && station.sideUp() == SideUp.BACK;
            boolean first = index == 0 || rows.get(index - 1).back() != back;
            int band = (int) stations.stream()
                    .skip(index)
                    .takeWhile(next -> (turned && next.sideUp() == SideUp.BACK) == back)
                    .count();
            rows.add(new RoutineRow(
                    station.no(),
                    station.shortName(),
                    station.doing(),
                    station.saying(),
                    back,
                    first,
                    band,
                    !shown.contains(station.no())));
        }
        return rows;
    }

    private TopicView topic(Leaf leaf, boolean first) {
        String label = leaf.head().subject().title()
                + leaf.head()
                        .station()
                        .filter(no -> edition.order().stops().contains(no))
                        .map(no -> ", stop " + no)
                        .orElse("");
        return new TopicView(
                leaf.head().anchor(),
                leaf.head().title(),
                label,
                first,
                blocks.text(leaf, Kind.IN_SHORT),
                leaf.sections().stream()
                        .filter(section -> section.kind() != Kind.IN_SHORT)
                        .map(blocks::section)
                        .toList(),
                words(leaf.practice().terms()),
                blocks.questions(leaf),
                leaf.head().credits().at().toString());
    }

    private List<WordView> words(List<Term> terms) {
        return terms.stream()
                .map(term -> new WordView(
                        term.term(), BlockViews.lines(term.term(), TERM_LETTERS), markup.write(term.meaning())))
                .toList();
    }

    private List<AskedGroup> asked() {
        return edition.all()
                .filter(leaf -> !leaf.practice().questions().isEmpty())
                .map(leaf -> new AskedGroup(
                        leaf.head().title(),
                        leaf.head().anchor(),
                        leaf.practice().questions().stream().map(this::asked).toList()))
                .toList();
    }

    private Asked asked(JudgeQuestion question) {
        int points = question.points().size();
        String need = question.enough() < points ? "any " + question.enough() + " of these" : "";
        return new Asked(markup.write(question.question()), need, markup.writeAll(question.points()));
    }

    private List<GuideView.SourceView> sources() {
        if (edition.level() != Level.SENIOR) {
            return List.of();
        }
        return edition.sources().stream()
                .map(source -> new GuideView.SourceView(Stream.of(source.publisher(), source.title(), source.year())
                                .filter(part -> !part.equals("n.d.") && !part.equals("not named"))
                                .collect(Collectors.joining(". "))
                        + (source.fromMemory() ? " (from memory)." : ".")))
                .toList();
    }
}
