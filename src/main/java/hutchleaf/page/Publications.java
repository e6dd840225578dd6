package hutchleaf.page;

import hutchleaf.contest.QuestionSet;
import hutchleaf.edition.Edition;
import hutchleaf.edition.Packet;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Member;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Setting;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardForm;
import hutchleaf.sheet.CardFormat;
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
        return manuscript(
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
        return manuscript(edition.level().title() + " lean guide", "lean-guide.ftl", view, problems);
    }

    /** A deck of fold-over flashcards, with a first page that tells how to make them. */
    public Optional<Manuscript> deck(Edition edition, Problems problems) {
        return cards(edition, edition.deck(), problems);
    }

    /** Some cards only, on sheets as a level's deck has them. */
    public Optional<Manuscript> cards(Edition edition, List<Card> cards, Problems problems) {
        return cards(edition, cards, new DeckPart(edition.level().title() + " deck", 0, 0, true), problems);
    }

    /** Some cards only, as a part of a file that holds more sheets. */
    public Optional<Manuscript> cards(Edition edition, List<Card> cards, DeckPart part, Problems problems) {
        return cards(edition, cards, usualForm(edition.level()), part, problems);
    }

    /** Some cards only, in a form; its page title names what differs from the usual. */
    public Optional<Manuscript> cards(
            Edition edition, List<Card> cards, CardForm form, DeckPart part, Problems problems) {
        String title = edition.level().title() + " flashcards";
        return manuscript(
                form.equals(usualForm(edition.level()))
                        ? title
                        : title + ", " + form.format().word(),
                "deck.ftl",
                DeckPages.of(edition, cards, part, form.on(paper)),
                problems);
    }

    /** How a level's cards are made where nothing else is asked for. */
    public static CardForm usualForm(Level level) {
        return CardForm.usual(DeckPages.usual(level));
    }

    /** The same in a setting: large print has cards of its own. */
    public static CardForm usualForm(Level level, Setting setting) {
        return setting == Setting.LARGE ? CardForm.usual(CardFormat.LARGE_PRINT) : usualForm(level);
    }

    /** Finds cards whose picture is too fine for a format; each problem stands at its card's place. */
    public static void checkPictures(Edition edition, List<Card> cards, CardFormat format, Problems problems) {
        FigureUses.check(edition.library().tables().drawings(), cards, format, problems);
    }

    /** Sheets that so many cards of a form take. */
    public int cardSheets(CardForm form, int cards) {
        return form.on(paper).sheets(cards);
    }

    /** Figures with their words, then blank, with the answers at the back; empty where the level has none. */
    public Optional<Manuscript> labelIt(Edition edition, Problems problems) {
        LabelItView view = LabelItPages.of(edition, paper, setting);
        return view.sheets().isEmpty()
                ? Optional.empty()
                : manuscript(
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
                .flatMap(view -> manuscript(
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
                .flatMap(sheet -> manuscript(
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
        return manuscript(
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
                .flatMap(view ->
                        manuscript(view.title() + setting.title(), Form.WENT_WELL.template(setting), view, problems));
    }

    /**
     * The paper on a judge's clipboard.
     *
     * @param sets drawn for the edition
     */
    public JudgePapers judge(Edition edition, JudgedClass shown, List<QuestionSet> sets) {
        return new JudgePapers(templates, paper, setting, edition, shown, sets);
    }

    /**
     * What a packet's sheets to write on have in common at a level: what to watch for, what was learned, figures to
     * label.
     *
     * @param total pages of the file; 0 while it is not known
     */
    public Optional<Manuscript> packetSheets(Edition edition, int total, Problems problems) {
        return manuscript(
                edition.level().title() + " practice sheets" + setting.title(),
                "packet-sheets.ftl",
                PacketSheets.of(edition, paper, setting, total),
                problems);
    }

    /** The words that date a packet: all that differs between two printings of the same pages. */
    public static String version(LocalDate printed) {
        return "version " + PrintedDate.plain(printed);
    }

    /** A date as a page prints it: {@code 8 August 2026}. */
    public static String date(LocalDate date) {
        return PrintedDate.plain(date);
    }

    /** A member's reading pages: letter, rabbit, routine, study plan, checklist and pocket sheet. */
    public Optional<Manuscript> packet(Packet packet, Problems problems) {
        return manuscript(
                "Show packet for " + whose(packet) + packet.needs().setting().title(),
                Form.PACKET.template(packet.needs().setting()),
                PacketPages.of(packet, paper),
                problems);
    }

    /** Paper for accommodations. */
    public HelpPapers help() {
        return new HelpPapers(templates, paper, setting);
    }

    /** The same as pages of half a sheet, for a booklet; without the pocket sheet. */
    public Optional<Manuscript> packetBooklet(Packet packet, Problems problems) {
        return manuscript(
                "Show booklet for " + whose(packet),
                "packet-booklet.ftl",
                PacketPages.booklet(packet, paper),
                problems);
    }

    /** The pocket sheet by itself. */
    public Optional<Manuscript> pocketSheet(Packet packet, Problems problems) {
        return manuscript(
                "Pocket sheet for " + whose(packet), "packet-pocket.ftl", PacketPages.of(packet, paper), problems);
    }

    private static String whose(Packet packet) {
        return packet.member().map(Member::name).orElse("any rabbit");
    }

    /** The leader's plan: what to print, for whom, on how much paper, and in which order members show. */
    public Optional<Manuscript> printPlan(PrintPlanData plan, Problems problems) {
        return manuscript("Print plan", "print-plan.ftl", PrintPlanPages.of(plan, paper), problems);
    }

    private Optional<Manuscript> manuscript(String title, String template, Record view, Problems problems) {
        return templates
                .fill(template, view, problems)
                .map(xhtml ->
                        new Manuscript(spelled().text(title), spelled().language(), xhtml, "templates/" + template));
    }
}
