package hutchleaf.page;

import hutchleaf.contest.QuestionSet;
import hutchleaf.edition.Edition;
import hutchleaf.model.ScoreSheet;
import hutchleaf.model.Setting;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The paper on one judge's clipboard, part by part in the order in which it is held: they differ in size, so a press binds them. */
public final class JudgePapers {
    private final Templates templates;
    private final Paper paper;
    private final Setting setting;
    private final Edition edition;
    private final JudgedClass shown;
    private final List<QuestionSet> sets;

    /**
     * @param setting of all parts; where pages flow, the sheets and the tally take the place of the grid
     * @param edition of the class's level
     * @param sets drawn for it, the first for the class, the second for the call-back
     */
    JudgePapers(
            Templates templates,
            Paper paper,
            Setting setting,
            Edition edition,
            JudgedClass shown,
            List<QuestionSet> sets) {
        this.setting = setting;
        this.templates = templates;
        this.paper = paper;
        this.edition = edition;
        this.shown = shown;
        this.sets = List.copyOf(sets);
    }

    /** What a reader's window shows: {@code Junior, judge 1}. */
    public String title() {
        return Spelled.plain(shown.division() + ", judge " + shown.judging().judge() + ", "
                + shown.show().name());
    }

    /**
     * All parts: check-in list and order of showing; score sheets, grids, sealed questions, call-back list and tally; for
     * primary slips and questions without points.
     *
     * @return fewer where a problem was added
     */
    public List<Manuscript> parts(Problems problems) {
        Optional<ScoreSheet> sheet = Publications.sheet(edition, problems);
        JudgeListView lists = JudgeListPages.of(shown, paper, setting, sheet, sets);
        List<Manuscript> parts = new ArrayList<>();
        add(parts, "check-in", Form.JUDGE_FRONT.template(setting), lists, problems);
        if (shown.scored()) {
            sheet.flatMap(found -> ScorePages.of(edition, found, paper, setting, shown, problems))
                    .ifPresent(view -> add(parts, "score sheets", Form.SCORE_SHEET.template(setting), view, problems));
            sheet.filter(found -> setting == Setting.ORDINARY)
                    .map(found -> GridPages.of(edition, found, paper, shown))
                    .ifPresent(view -> add(parts, "score grid", "score-grid.ftl", view, problems));
            add(parts, "sealed questions", Form.JUDGE_SEAL.template(setting), lists, problems);
        } else {
            WentWellPages.of(edition, Look.of(edition.level(), paper, setting), shown, problems)
                    .ifPresent(view -> add(parts, "slips", Form.WENT_WELL.template(setting), view, problems));
        }
        QuestionsView questions = QuestionPages.of(
                edition, Look.of(edition.level(), paper, setting), sets, Map.of(), shown.scored() ? shown.grids() : 1);
        add(parts, "questions for the judge", Form.QUESTIONS.template(setting), questions, problems);
        if (shown.ranked()) {
            add(parts, "call-back and tally", Form.JUDGE_BACK.template(setting), lists, problems);
        }
        return parts;
    }

    private void add(List<Manuscript> parts, String what, String template, Record view, Problems problems) {
        templates
                .manuscript(edition.level().title() + " " + what, template, view, problems)
                .ifPresent(parts::add);
    }
}
