package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Stop;
import hutchleaf.model.Section;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Station.SideUp;
import hutchleaf.page.GuideView.StopView;
import hutchleaf.page.GuideView.WordView;
import hutchleaf.page.LeanView.LeanStop;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes the view of a lean guide: what a member does, looks for and says at each stop, on pages of half a sheet. */
final class LeanGuidePages {
    /** The id of the page after the last stop. */
    static final String WORDS = "words";

    private final Edition edition;
    private final Look look;
    private final Markup markup;

    private LeanGuidePages(Edition edition, Paper paper) {
        this.edition = edition;
        this.look = Look.half(edition.level(), paper);
        this.markup = Markup.unlinked(edition);
    }

    /** The view before it is known which stops need two pages. */
    static LeanView draft(Edition edition, Paper paper, String club) {
        return new LeanGuidePages(edition, paper)
                .view(club, edition.stops().stream().map(stop -> "flow").toList());
    }

    /**
     * The finished view.
     *
     * @param draftPages where each part of the draft starts
     */
    static LeanView of(Edition edition, Paper paper, String club, Map<String, Integer> draftPages) {
        return new LeanGuidePages(edition, paper)
                .view(
                        club,
                        LeanSpreads.of(tooLong(edition, draftPages)).stream()
                                .map(two -> two ? "two" : "one")
                                .toList());
    }

    private static List<Boolean> tooLong(Edition edition, Map<String, Integer> draftPages) {
        List<String> ids = new ArrayList<>(edition.stops().stream()
                .map(stop -> stop.leaf().head().anchor())
                .toList());
        ids.add(WORDS);
        List<Boolean> tooLong = new ArrayList<>();
        for (int index = 0; index + 1 < ids.size(); index++) {
            tooLong.add(page(draftPages, ids.get(index + 1)) - page(draftPages, ids.get(index)) > 1);
        }
        return tooLong;
    }

    private static int page(Map<String, Integer> draftPages, String id) {
        Integer page = draftPages.get(id);
        if (page == null) {
            throw new IllegalArgumentException("the draft has no part " + id);
        }
        return page;
    }

    private LeanView view(String club, List<String> pages) {
        FigureViews figures = new FigureViews(edition.library().tables().drawings(), edition.level(), look);
        List<StopView> views = new StopPages(edition, markup, new BlockViews(markup, figures), figures).views();
        boolean turned = edition.order().stops().contains(5);
        List<LeanStop> stops = new ArrayList<>();
        for (int index = 0; index < views.size(); index++) {
            Stop stop = edition.stops().get(index);
            boolean back = turned && stop.station().sideUp() == SideUp.BACK;
            stops.add(new LeanStop(
                    views.get(index),
                    pages.get(index),
                    figures.roomFor(stop.leaf()
                            .section(Kind.SEE_IT)
                            .map(Section::pictures)
                            .orElse(List.of())),
                    back));
        }
        return new LeanView(
                look,
                figures.sizes(),
                club,
                edition.division().map(GuidePages::band).orElse(""),
                GuidePages.routine(edition),
                stops,
                words());
    }

    /** The words of the stops; all others stand in the study guide. */
    private List<WordView> words() {
        return edition.stops().stream()
                .map(Stop::leaf)
                .flatMap(leaf -> leaf.practice().terms().stream())
                .sorted((one, other) -> one.term().compareToIgnoreCase(other.term()))
                .map(term -> new WordView(term.term(), 1, markup.write(term.meaning())))
                .toList();
    }
}
