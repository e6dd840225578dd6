package hutchleaf.page;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.edition.Edition;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.model.Setting;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardForm;
import hutchleaf.sheet.Paper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** The project's own tree printed, for tests that read the finished PDFs. Each document is printed once. */
final class RealTree {
    private static final ContentTree TREE = new ContentTree(Path.of("content"), "content");
    private static final Library LIBRARY = read();
    private static final Press PRESS = new Press(TREE::bytes);
    private static final Map<String, Printed> PRINTED = new ConcurrentHashMap<>();

    private RealTree() {}

    private static Library read() {
        Problems problems = new Problems();
        return LibraryReader.read(TREE, problems)
                .orElseThrow(() -> new AssertionError(problems.sorted().toString()));
    }

    static Edition edition(Level level) {
        return Edition.of(LIBRARY, level, new Problems());
    }

    static Printed guide(Level level, Paper paper) {
        return PRINTED.computeIfAbsent(
                "guide " + level + paper,
                key -> print(publications(paper).guide(edition(level), "A Club", new Problems())));
    }

    static Printed leanGuide(Level level, Paper paper) {
        return PRINTED.computeIfAbsent("lean " + level + paper, key -> {
            Printed draft = print(publications(paper).leanGuideDraft(edition(level), "A Club", new Problems()));
            return print(publications(paper).leanGuide(edition(level), "A Club", draft.pageOf(), new Problems()));
        });
    }

    static Printed guide(Level level, Setting setting) {
        return PRINTED.computeIfAbsent(
                "guide " + level + setting,
                key -> print(publications(Paper.LETTER).guide(edition(level), "A Club", setting, new Problems())));
    }

    /** What one of the forms of a publication prints in a setting. */
    static Printed in(
            Setting setting, String what, Level level, Paper paper, Function<Publications, Optional<Manuscript>> form) {
        return PRINTED.computeIfAbsent(
                what + level + paper + setting,
                key -> print(form.apply(publications(paper).in(setting))));
    }

    static Printed talkThrough(Level level, Setting setting) {
        return in(
                setting,
                "talk-through ",
                level,
                Paper.LETTER,
                set -> set.help().talkThrough(edition(level), new Problems()));
    }

    static Printed cueCard(Level level, Paper paper, Setting setting) {
        return in(setting, "cue card ", level, paper, set -> set.help().cueCard(edition(level), new Problems()));
    }

    static Printed deck(Level level, Paper paper) {
        return PRINTED.computeIfAbsent(
                "deck " + level + paper,
                key -> print(publications(paper).cards().deck(edition(level), new Problems())));
    }

    static Printed labelIt(Level level, Paper paper) {
        return PRINTED.computeIfAbsent(
                "label " + level + paper, key -> print(publications(paper).labelIt(edition(level), new Problems())));
    }

    static Printed scoreSheet(Level level, Paper paper) {
        return PRINTED.computeIfAbsent(
                "score " + level + paper,
                key -> print(publications(paper).scoreSheet(edition(level), "A Club", new Problems())));
    }

    /** The first cards of a level's deck, as many as wanted. */
    static Printed cards(Level level, Paper paper, int many) {
        Edition edition = edition(level);
        return PRINTED.computeIfAbsent(
                many + " cards " + level + paper,
                key -> print(
                        publications(paper).cards().some(edition, edition.deck().subList(0, many), new Problems())));
    }

    /** Cards in a form; nothing of it is kept. */
    static byte[] cards(Edition edition, List<Card> cards, CardForm form, Paper paper, boolean tells) {
        DeckPart part = new DeckPart("Seeded deck", 0, 0, tells);
        return bytes(print(publications(paper).cards().some(edition, cards, form, part, new Problems())));
    }

    static Publications publications(Paper paper) {
        return new Publications(Templates.folder(Path.of("templates")), paper, "en");
    }

    static Printed print(Optional<Manuscript> manuscript) {
        Problems problems = new Problems();
        return manuscript
                .flatMap(pages -> PRESS.print(pages, problems))
                .orElseThrow(() -> new AssertionError(problems.sorted().toString()));
    }

    static byte[] bytes(Printed printed) {
        try (InputStream pdf = printed.open()) {
            return pdf.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
