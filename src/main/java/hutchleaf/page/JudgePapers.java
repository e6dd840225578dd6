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
    private final Edition edition;
    private final JudgedClass shown;
    private final List<QuestionSet> sets;

    /**
     * @param edition of the class's level
     * @param sets drawn for it, the first for the class, the second for the call-back
     */
    JudgePapers(Templates templates, Paper paper, Edition edition, JudgedClass shown, List<QuestionSet> sets) {
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
        JudgeListView lists = JudgeListPages.of(shown, paper, sheet, sets);
        List<Manuscript> parts = new ArrayList<>();
        add(parts, "check-in", "judge-front.ftl", lists, problems);
        if (shown.scored()) {
            sheet.flatMap(found -> ScorePages.of(edition, found, paper, Setting.ORDINARY, shown, problems))
                    .ifPresent(view -> add(parts, "score sheets", "score-sheet.ftl", view, problems));
            sheet.map(found -> GridPages.of(edition, found, paper, shown))
                    .ifPresent(view -> add(parts, "score grid", "score-grid.ftl", view, problems));
            add(parts, "sealed questions", "judge-seal.ftl", lists, problems);
        } else {
            WentWellPages.of(edition, Look.of(edition.level(), paper), shown, problems)
                    .ifPresent(view -> add(parts, "slips", "went-well.ftl", view, problems));
        }
        QuestionsView questions = QuestionPages.of(
                edition, Look.of(edition.level(), paper), sets, Map.of(), shown.scored() ? shown.grids() : 1);
        add(parts, "questions for the judge", "questions.ftl", questions, problems);
        if (shown.ranked()) {
            add(parts, "call-back and tally", "judge-back.ftl", lists, problems);
        }
        return parts;
    }

    private void add(List<Manuscript> parts, String what, String template, Record view, Problems problems) {
        templates
                .fill(template, view, problems)
                .ifPresent(xhtml -> parts.add(new Manuscript(
                        edition.level().title() + " " + what,
                        templates.spelled().language(),
                        xhtml,
                        "templates/" + template)));
    }
}
