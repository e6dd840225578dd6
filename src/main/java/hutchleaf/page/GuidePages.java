package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.edition.Stop;
import hutchleaf.model.Block;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.Fact;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Station;
import hutchleaf.model.Station.SideUp;
import hutchleaf.model.Subject;
import hutchleaf.model.Term;
import hutchleaf.page.GuideView.Asked;
import hutchleaf.page.GuideView.AskedGroup;
import hutchleaf.page.GuideView.Chapter;
import hutchleaf.page.GuideView.Entry;
import hutchleaf.page.GuideView.Hop;
import hutchleaf.page.GuideView.RoutineRow;
import hutchleaf.page.GuideView.Scored;
import hutchleaf.page.GuideView.SectionView;
import hutchleaf.page.GuideView.Spoken;
import hutchleaf.page.GuideView.StopView;
import hutchleaf.page.GuideView.TopicView;
import hutchleaf.page.GuideView.WordView;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the view of a study guide from an edition. */
final class GuidePages {
    private static final int TERM_LETTERS = 16;

    private static final Set<Kind> PLACED = Set.of(
            Kind.IN_SHORT,
            Kind.SEE_IT,
            Kind.STEPS,
            Kind.CAUTION,
            Kind.LOOK_FOR,
            Kind.SAY_IT,
            Kind.IF_YOU_FIND_IT,
            Kind.OFTEN_MISSED);

    /** The topic that stands before the routine in every guide. */
    static final String SAFETY = "handling/before-you-start.md";

    private final Edition edition;
    private final Markup markup;
    private final BlockViews blocks;

    private GuidePages(Edition edition) {
        this.edition = edition;
        this.markup = new Markup(this::anchor, this::filling);
        this.blocks = new BlockViews(markup, edition.library().tables().drawings());
    }

    /**
     * The view of a guide.
     *
     * @param club whose name stands on the cover
     */
    static GuideView of(Edition edition, Paper paper, String club) {
        return new GuidePages(edition).view(paper, club);
    }

    /** Writes words for an edition without a rabbit or a member of its own. */
    static Markup markup(Edition edition) {
        return new GuidePages(edition).markup;
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

    private GuideView view(Paper paper, String club) {
        List<TopicView> topics = new ArrayList<>();
        for (Subject subject : Subject.values()) {
            List<Leaf> leaves = printed(subject);
            for (int index = 0; index < leaves.size(); index++) {
                topics.add(topic(leaves.get(index), index == 0));
            }
        }
        return new GuideView(
                Look.of(edition.level(), paper),
                cover(club),
                chapters(),
                edition.stops().stream().map(this::stop).toList(),
                topics,
                new GuideView.Back(asked(), SelfTestPages.of(edition, markup), words(edition.terms()), sources()));
    }

    private List<Leaf> printed(Subject subject) {
        return edition.leaves(subject).stream()
                .filter(leaf -> !leaf.head().path().equals(SAFETY))
                .toList();
    }

    private GuideView.Cover cover(String club) {
        return new GuideView.Cover(
                club,
                edition.division().map(GuidePages::band).orElse(""),
                routine(),
                edition.leaves().stream()
                        .filter(leaf -> leaf.head().path().equals(SAFETY))
                        .map(leaf -> topic(leaf, true))
                        .findFirst(),
                Arrays.stream(Level.values())
                        .map(level -> new GuideView.Mark(level.blackToes(), level.title()))
                        .toList());
    }

    /** Whom the cover speaks of: {@code Members aged 8 to 10}. */
    private static String band(DivisionRule rule) {
        String what = rule.by() == DivisionRule.By.GRADE ? "Members in grades " : "Members aged ";
        String from = rule.from().map(String::valueOf).orElse("");
        String to = rule.to().map(String::valueOf).orElse("");
        if (to.isEmpty()) {
            return what + from + " and over";
        }
        return from.isEmpty() ? what + "up to " + to : what + from + " to " + to;
    }

    private List<RoutineRow> routine() {
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

    private List<Chapter> chapters() {
        List<Chapter> chapters = new ArrayList<>();
        chapters.add(new Chapter(
                "Start here",
                List.of(
                        new Entry("how-to-use", "How to use this guide", 0),
                        new Entry("safety", "Safe rabbit, safe you", 0),
                        new Entry("routine", "The routine on one page", 0)),
                false));
        chapters.add(new Chapter(
                edition.stops().size() + " stops",
                edition.stops().stream()
                        .map(stop -> new Entry(
                                stop.leaf().head().anchor(),
                                stop.station().name(),
                                stop.station().no()))
                        .toList(),
                true));
        for (Subject subject : Subject.values()) {
            List<Entry> entries = printed(subject).stream()
                    .map(leaf -> new Entry(leaf.head().anchor(), leaf.head().title(), 0))
                    .toList();
            if (!entries.isEmpty()) {
                chapters.add(new Chapter(subject.title(), entries, false));
            }
        }
        List<Entry> back = new ArrayList<>(List.of(
                new Entry("asked", "What a judge may ask", 0),
                new Entry("self-test", "Self-test", 0),
                new Entry("answers", "Answers", 0),
                new Entry("words", "Words to know, A to Z", 0)));
        if (!sources().isEmpty()) {
            back.add(new Entry("sources", "Where the facts come from", 0));
        }
        chapters.add(new Chapter("Check yourself", back, false));
        return chapters;
    }

    private StopView stop(Stop stop) {
        Leaf leaf = stop.leaf();
        List<Hop> hops = edition.stops().stream()
                .map(other -> new Hop(
                        other.station().no(),
                        other.station().no() < stop.station().no(),
                        other.equals(stop)))
                .toList();
        List<SectionView> more = leaf.sections().stream()
                .filter(section -> !PLACED.contains(section.kind()))
                .map(blocks::section)
                .toList();
        return new StopView(
                stop.station().no(),
                leaf.head().anchor(),
                stop.station().name(),
                hops,
                text(leaf, Kind.IN_SHORT).orElse(new Xml("")),
                leaf.section(Kind.SEE_IT)
                        .map(section ->
                                section.pictures().stream().map(blocks::picture).toList())
                        .orElse(List.of()),
                leaf.section(Kind.STEPS)
                        .map(section -> markup.writeAll(section.steps()))
                        .orElse(List.of()),
                more,
                leaf.section(Kind.CAUTION)
                        .map(section -> markup.firstSentenceStrong(section.text()))
                        .orElse(new Xml("")),
                spoken(leaf),
                stop.scored().map(block -> scored(stop, block)),
                leaf.head().credits().at().toString());
    }

    private Spoken spoken(Leaf leaf) {
        Optional<Block.Table> table = leaf.section(Kind.LOOK_FOR)
                .map(section -> (Block.Table) section.blocks().get(0));
        boolean starred = table.stream()
                .flatMap(Block.Table::words)
                .anyMatch(words -> words.plain().endsWith("*"));
        return new Spoken(
                table.map(found -> blocks.table(found, 1)),
                starred,
                text(leaf, Kind.SAY_IT).orElse(new Xml("")),
                text(leaf, Kind.IF_YOU_FIND_IT),
                text(leaf, Kind.OFTEN_MISSED),
                questions(leaf));
    }

    private Optional<Xml> text(Leaf leaf, Kind kind) {
        return leaf.section(kind).map(Section::text).map(markup::write);
    }

    private List<Xml> questions(Leaf leaf) {
        return leaf.practice().questions().stream()
                .map(JudgeQuestion::question)
                .map(markup::write)
                .toList();
    }

    private static Scored scored(Stop stop, hutchleaf.model.ScoreSheet.Block block) {
        List<String> others = block.stops().stream()
                .filter(no -> no != stop.station().no())
                .map(String::valueOf)
                .toList();
        String with = others.size() == 1
                ? "this stop and stop " + others.get(0) + " together"
                : "this stop with stops " + String.join(", ", others.subList(0, others.size() - 1)) + " and "
                        + others.get(others.size() - 1);
        return new Scored(block.letter(), with, block.lookingFor(), block.hands(), block.voice());
    }

    private TopicView topic(Leaf leaf, boolean first) {
        String label = leaf.head().subject().title()
                + leaf.head().station().map(no -> ", stop " + no).orElse("");
        return new TopicView(
                leaf.head().anchor(),
                leaf.head().title(),
                label,
                first,
                text(leaf, Kind.IN_SHORT),
                leaf.sections().stream()
                        .filter(section -> section.kind() != Kind.IN_SHORT)
                        .map(blocks::section)
                        .toList(),
                words(leaf.practice().terms()),
                questions(leaf),
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
