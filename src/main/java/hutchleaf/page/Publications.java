package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.Paper;
import java.util.Optional;

/** The door of this stage: one method for each kind of publication. */
public final class Publications {
    private final Templates templates;
    private final Paper paper;
    private final String language;

    /**
     * Sets up for one run.
     *
     * @param language BCP 47 tag of the content's language
     */
    public Publications(Templates templates, Paper paper, String language) {
        this.templates = templates;
        this.paper = paper;
        this.language = language;
    }

    /**
     * A study guide.
     *
     * @param club whose name stands on the cover
     */
    public Optional<Manuscript> guide(Edition edition, String club, Problems problems) {
        return manuscript(
                edition.level().title() + " study guide", "guide.ftl", GuidePages.of(edition, paper, club), problems);
    }

    /** A deck of fold-over flashcards, with a first page that tells how to make them. */
    public Optional<Manuscript> deck(Edition edition, Problems problems) {
        return manuscript(edition.level().title() + " flashcards", "deck.ftl", DeckPages.of(edition, paper), problems);
    }

    private Optional<Manuscript> manuscript(String title, String template, Record view, Problems problems) {
        return templates
                .fill(template, view, problems)
                .map(xhtml -> new Manuscript(title, language, xhtml, "templates/" + template));
    }
}
