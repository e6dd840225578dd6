package hutchleaf.cli;

import hutchleaf.contest.QuestionSet;
import hutchleaf.contest.QuestionSets;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.Manuscript;
import hutchleaf.page.Publications;
import hutchleaf.page.Setting;
import hutchleaf.press.Figures;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Sides;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything that one division gets, printed by one thread with a press of its own. */
final class LevelRun {
    /** A finished file, how many sheets it takes and for whom it is. */
    record Made(String file, Printed printed, int sheets, String whom) {}

    private static final String CLUB = "Quarry Bend Small Stock Club";

    /** Sets of questions for a division, so that two classes and a call-back need not share one. */
    private static final int SETS = 3;

    /** Fixed, so that a judge's list printed again is the same list. */
    static final long SEED = 20_260_808;

    private final Level level;
    private final Publications publications;
    private final Set<Setting> settings;
    private final Press press;
    private final Problems problems = new Problems();
    private final List<Made> made = new ArrayList<>();

    /** @param settings in which the guide is printed beside the ordinary one */
    LevelRun(Level level, Publications publications, Set<Setting> settings, Figures figures) {
        this.settings = settings;
        this.level = level;
        this.publications = publications;
        this.press = new Press(figures);
    }

    /** Prints all of it, unless the library lacks something the level needs. */
    LevelRun run(Library library) {
        Edition edition = Edition.of(library, level, problems);
        if (!problems.hasErrors()) {
            membersPaper(edition);
            judgesPaper(edition);
        }
        return this;
    }

    private void membersPaper(Edition edition) {
        String whom = "members, " + level.word();
        add("guides/study-guide-", whom, publications.guide(edition, CLUB, problems), Sides.TWO);
        for (Setting setting : settings) {
            publications
                    .guide(edition, CLUB, setting, problems)
                    .flatMap(pages -> press.print(pages, problems))
                    .ifPresent(pdf -> made.add(new Made(
                            "guides/study-guide-" + level.word() + setting.suffix() + ".pdf",
                            pdf,
                            Sides.TWO.sheets(pdf.pages()),
                            whom)));
        }
        add("cards/flashcards-", whom, publications.deck(edition, problems), Sides.ONE);
        add("labels/label-it-", whom, publications.labelIt(edition, problems), Sides.ONE);
    }

    /** Score sheet, grid and questions; primary gets no points, so its sheet only says what went well. */
    private void judgesPaper(Edition edition) {
        String whom = "judge, " + level.word();
        Map<String, Integer> guidePages =
                made.stream().findFirst().map(guide -> guide.printed().pageOf()).orElse(Map.of());
        boolean primary = level == Level.PRIMARY;
        List<QuestionSet> sets = QuestionSets.draw(edition, sets(level), SEED, problems);
        add("scoresheets/questions-", whom, publications.questions(edition, sets, guidePages, problems), Sides.ONE);
        if (primary) {
            add("scoresheets/what-went-well-", whom, publications.wentWell(edition, CLUB, problems), Sides.ONE);
        } else {
            add("scoresheets/score-sheet-", whom, publications.scoreSheet(edition, "", problems), Sides.ONE);
            add("scoresheets/score-grid-", whom, publications.scoreGrid(edition, problems), Sides.ONE);
        }
    }

    /** How many sets a level's judge gets: primary has a talk and no call-back. */
    static int sets(Level level) {
        return level == Level.PRIMARY ? 1 : SETS;
    }

    private void add(String name, String whom, Optional<Manuscript> manuscript, Sides sides) {
        manuscript
                .flatMap(pages -> press.print(pages, problems))
                .ifPresent(
                        pdf -> made.add(new Made(name + level.word() + ".pdf", pdf, sides.sheets(pdf.pages()), whom)));
    }

    Problems problems() {
        return problems;
    }

    List<Made> made() {
        return List.copyOf(made);
    }
}
