package hutchleaf.cli;

import hutchleaf.contest.QuestionSet;
import hutchleaf.contest.QuestionSets;
import hutchleaf.edition.Edition;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Setting;
import hutchleaf.page.Manuscript;
import hutchleaf.page.Publications;
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
import java.util.function.BiConsumer;

/** Everything that one division gets, printed by one thread with a press of its own. */
final class LevelRun {
    /** A finished file, how many sheets it takes and for whom it is. */
    record Made(String file, Printed printed, int sheets, String whom) {}

    private static final String GUIDE = "guides/study-guide-";
    private static final String CLUB = "Quarry Bend Small Stock Club";

    /** Sets of questions for a division, so that two classes and a call-back need not share one. */
    private static final int SETS = 3;

    /** Fixed, so that a judge's list printed again is the same list. */
    static final long SEED = 20_260_808;

    private final Level level;
    private final Publications publications;
    private final Set<Setting> settings;
    private final boolean accommodation;
    private final Press press;
    private final Problems problems = new Problems();
    private final List<Made> made = new ArrayList<>();

    /**
     * @param settings in which paper is printed beside the ordinary one
     * @param accommodation whether talk-through sheet and cue card are printed
     */
    LevelRun(Level level, Publications publications, Set<Setting> settings, boolean accommodation, Figures figures) {
        this.settings = settings;
        this.accommodation = accommodation;
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
        if (accommodation && !problems.hasErrors()) {
            accommodation(edition);
        }
        return this;
    }

    private void membersPaper(Edition edition) {
        String whom = "members, " + level.word();
        add(GUIDE, whom, publications.guide(edition, CLUB, problems), Sides.TWO);
        for (Setting setting : settings) {
            add(GUIDE, setting, whom, publications.guide(edition, CLUB, setting, problems), Sides.TWO);
        }
        add("cards/flashcards-", whom, publications.cards().deck(edition, problems), Sides.ONE);
        each((setting, set) -> add("labels/label-it-", setting, whom, set.labelIt(edition, problems), Sides.ONE));
    }

    /** Score sheet, grid and questions; primary gets no points, so its sheet only says what went well. */
    private void judgesPaper(Edition edition) {
        String whom = "judge, " + level.word();
        List<QuestionSet> sets = QuestionSets.draw(edition, sets(level), SEED, problems);
        each((setting, set) -> {
            add(
                    "scoresheets/questions-",
                    setting,
                    whom,
                    set.questions(edition, sets, guidePages(setting), problems),
                    Sides.ONE);
            if (level == Level.PRIMARY) {
                add("scoresheets/what-went-well-", setting, whom, set.wentWell(edition, CLUB, problems), Sides.ONE);
            } else {
                add("scoresheets/score-sheet-", setting, whom, set.scoreSheet(edition, "", problems), Sides.ONE);
            }
        });
        if (level != Level.PRIMARY) {
            add("scoresheets/score-grid-", whom, publications.scoreGrid(edition, problems), Sides.ONE);
        }
    }

    /** Where the guide of a setting tells of each topic. */
    private Map<String, Integer> guidePages(Setting setting) {
        String guide = file(GUIDE, setting);
        return made.stream()
                .filter(each -> each.file().equals(guide))
                .findFirst()
                .map(each -> each.printed().pageOf())
                .orElse(Map.of());
    }

    private void accommodation(Edition edition) {
        String whom = "members, " + level.word();
        each((setting, set) -> {
            add("accommodation/talk-through-", setting, whom, set.help().talkThrough(edition, problems), Sides.ONE);
            add("accommodation/cue-card-", setting, whom, set.help().cueCard(edition, problems), Sides.ONE);
        });
    }

    /** In the ordinary setting, then in each that was asked for. */
    private void each(BiConsumer<Setting, Publications> print) {
        print.accept(Setting.ORDINARY, publications);
        settings.forEach(setting -> print.accept(setting, publications.in(setting)));
    }

    private String file(String name, Setting setting) {
        return name + level.word() + setting.suffix() + ".pdf";
    }

    /** How many sets a level's judge gets: primary has a talk and no call-back. */
    static int sets(Level level) {
        return level == Level.PRIMARY ? 1 : SETS;
    }

    private void add(String name, String whom, Optional<Manuscript> manuscript, Sides sides) {
        add(name, Setting.ORDINARY, whom, manuscript, sides);
    }

    private void add(String name, Setting setting, String whom, Optional<Manuscript> manuscript, Sides sides) {
        manuscript
                .flatMap(pages -> press.print(pages, problems))
                .ifPresent(pdf -> made.add(new Made(file(name, setting), pdf, sides.sheets(pdf.pages()), whom)));
    }

    Problems problems() {
        return problems;
    }

    List<Made> made() {
        return List.copyOf(made);
    }
}
