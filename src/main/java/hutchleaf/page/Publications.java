package hutchleaf.page;

import hutchleaf.contest.QuestionSet;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Setting;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The door of this stage: one method for each kind of publication. */
public final class Publications {
    /** BCP 47 tag of what is printed as it is written. */
    static final String LANGUAGE = "en";

    private final Templates templates;
    private final Paper paper;
    private final Setting setting;

    /**
     * Sets up for one run.
     *
     * @param language BCP 47 tag of the content's language
     */
    public Publications(Templates templates, Paper paper, String language) {
        this(templates, paper, Spelled.asWritten(language));
    }

    /**
     * Sets up for one run that prints one spelling.
     *
     * @param spelled how words are spelled, and with it the language
     */
    public Publications(Templates templates, Paper paper, Spelled spelled) {
        this(templates.in(spelled), paper, Setting.ORDINARY);
    }

    private Publications(Templates templates, Paper paper, Setting setting) {
        this.templates = templates;
        this.paper = paper;
        this.setting = setting;
    }

    /** The same in a setting: sheets to write on, the judge's paper and paper for accommodations. */
    public Publications in(Setting other) {
        return new Publications(templates, paper, other);
    }

    /** How everything is spelled that this prints. */
    public Spelled spelled() {
        return templates.spelled();
    }

    /**
     * A study guide.
     *
     * @param club whose name stands on the cover
     */
    public Optional<Manuscript> guide(Edition edition, String club, Problems problems) {
        return guide(edition, club, Setting.ORDINARY, problems);
    }

    /**
     * A study guide in a setting.
     *
     * @param club whose name stands on the cover
     */
    public Optional<Manuscript> guide(Edition edition, String club, Setting setting, Problems problems) {
        return templates.manuscript(
                edition.level().title() + " study guide" + setting.title(),
                "guide.ftl",
                GuidePages.of(edition, paper, club, setting),
                problems);
    }

    /**
     * The lean guide before it is known which stops need two pages: each takes as many as it does.
     *
     * @param club whose name stands on the cover; may be empty
     */
    public Optional<Manuscript> leanGuideDraft(Edition edition, String club, Problems problems) {
        return lean(edition, LeanGuidePages.draft(edition, paper, club), problems);
    }

    /**
     * The lean guide: one page of half a sheet for each stop, or two that face each other, on pages of their own size.
     *
     * @param club whose name stands on the cover; may be empty
     * @param draftPages the page of the draft on which each of its parts starts, by id
     */
    public Optional<Manuscript> leanGuide(
            Edition edition, String club, Map<String, Integer> draftPages, Problems problems) {
        return lean(edition, LeanGuidePages.of(edition, paper, club, draftPages), problems);
    }

    private Optional<Manuscript> lean(Edition edition, LeanView view, Problems problems) {
        return templates.manuscript(edition.level().title() + " lean guide", "lean-guide.ftl", view, problems);
    }

    /** Fold-over flashcards. */
    public CardPapers cards() {
        return new CardPapers(templates, paper);
    }

    /** Figures with their words, then blank, with the answers at the back; empty where the level has none. */
    public Optional<Manuscript> labelIt(Edition edition, Problems problems) {
        LabelItView view = LabelItPages.of(edition, paper, setting);
        return view.sheets().isEmpty()
                ? Optional.empty()
                : templates.manuscript(
                        edition.level().title() + " figures to label" + setting.title(),
                        "label-it.ftl",
                        view,
                        problems);
    }

    /**
     * A score sheet for one contestant.
     *
     * @param club whose name stands on it; may be empty
     * @return empty for primary, which gets no points
     */
    public Optional<Manuscript> scoreSheet(Edition edition, String club, Problems problems) {
        return sheet(edition, problems)
                .flatMap(sheet -> ScorePages.of(edition, sheet, paper, setting, club, problems))
                .flatMap(view -> templates.manuscript(
                        edition.level().title() + " score sheet" + setting.title(),
                        Form.SCORE_SHEET.template(setting),
                        view,
                        problems));
    }

    /**
     * A grid for ten contestants.
     *
     * @return empty for primary, which gets no points
     */
    public Optional<Manuscript> scoreGrid(Edition edition, Problems problems) {
        return sheet(edition, problems)
                .flatMap(sheet -> templates.manuscript(
                        edition.level().title() + " score grid",
                        "score-grid.ftl",
                        GridPages.of(edition, sheet, paper),
                        problems));
    }

    static Optional<ScoreSheet> sheet(Edition edition, Problems problems) {
        Optional<ScoreSheet> sheet = edition.library().contest().sheetFor(edition.level());
        if (sheet.isEmpty() && edition.level() != Level.PRIMARY) {
            problems.add(
                    Place.whole("content/contest/scoresheet.md"),
                    "no rows for " + edition.level().word(),
                    "add its six blocks and what counts all through");
        }
        return sheet;
    }

    /**
     * Question sets, a page each.
     *
     * @param sets one or more, drawn for the edition
     * @param guidePages the page of the guide on which each topic starts, by its anchor; a topic without one prints none
     */
    public Optional<Manuscript> questions(
            Edition edition, List<QuestionSet> sets, Map<String, Integer> guidePages, Problems problems) {
        return templates.manuscript(
                edition.level().title() + " questions for the judge" + setting.title(),
                Form.QUESTIONS.template(setting),
                QuestionPages.of(edition, Look.of(edition.level(), paper, setting), sets, guidePages),
                problems);
    }

    /**
     * Primary's sheet without points: two slips of half a page.
     *
     * @param club whose name stands on it; may be empty
     */
    public Optional<Manuscript> wentWell(Edition edition, String club, Problems problems) {
        return WentWellPages.of(edition, Look.of(edition.level(), paper, setting), club, problems)
                .flatMap(view -> templates.manuscript(
                        view.title() + setting.title(), Form.WENT_WELL.template(setting), view, problems));
    }

    /**
     * The paper on a judge's clipboard.
     *
     * @param sets drawn for the edition
     */
    public JudgePapers judge(Edition edition, JudgedClass shown, List<QuestionSet> sets) {
        return new JudgePapers(templates, paper, setting, edition, shown, sets);
    }

    /** The words that date a packet: all that differs between two printings of the same pages. */
    public static String version(LocalDate printed) {
        return "version " + PrintedDate.plain(printed);
    }

    /** A date as a page prints it: {@code 8 August 2026}. */
    public static String date(LocalDate date) {
        return PrintedDate.plain(date);
    }

    /** What is printed for one member. */
    public PacketPapers packets() {
        return new PacketPapers(templates, paper);
    }

    /** Paper for accommodations. */
    public HelpPapers help() {
        return new HelpPapers(templates, paper, setting);
    }

    /** The leader's plan: what to print, for whom, on how much paper, and in which order members show. */
    public Optional<Manuscript> printPlan(PrintPlanData plan, Problems problems) {
        return templates.manuscript("Print plan", "print-plan.ftl", PrintPlanPages.of(plan, paper), problems);
    }
}
