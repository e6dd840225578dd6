package hutchleaf.rabbit;

import hutchleaf.model.Inline;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Questions a judge is likely to ask about the member's own rabbit, with the points of the answer filled in for it. */
public final class OwnQuestions {
    private final Findings findings;
    private final Level level;
    private final boolean mixed;
    private final List<JudgeQuestion> questions = new ArrayList<>();

    private OwnQuestions(Findings findings, Level level) {
        this.findings = findings;
        this.level = level;
        this.mixed = Lines.mixed(findings.rabbit());
    }

    /** 5 questions for primary, 6 for junior, 8 for the older levels (6 for a mixed breed). What is not known is left as a line to write on. */
    public static List<JudgeQuestion> of(Findings findings, Level level) {
        OwnQuestions own = new OwnQuestions(findings, level);
        switch (level) {
            case PRIMARY -> own.primary();
            case JUNIOR -> own.junior();
            case INTERMEDIATE, SENIOR -> own.older();
        }
        return List.copyOf(own.questions);
    }

    private void primary() {
        ask("What breed is your rabbit?", 1, point(Point.BREED));
        ask("How old is your rabbit?", 1, point(Point.AGE));
        ask("Is your rabbit a buck or a doe?", 1, point(Point.SEX));
        ask("What colour are your rabbit’s eyes?", 1, point(Point.EYE), plain("both eyes match"));
        ask("What does its fur do, or feel like?", 1, point(Point.FUR_TEST), point(Point.FUR));
    }

    private void junior() {
        ask(
                "Tell me about your rabbit.",
                3,
                point(Point.BREED),
                point(Point.VARIETY),
                point(Point.SEX),
                point(Point.AGE));
        showClass(2);
        ask("Show me its pose. Which body type is it?", 2, point(Point.POSE), point(Point.BODY_TYPE));
        ask("Which eyes and nails should it have?", 2, point(Point.EYE), point(Point.NAILS));
        ask("Which fur type is it, and how do you know?", 2, point(Point.FUR), point(Point.FUR_TEST));
        ask("What is its ear number, and where is it?", 2, point(Point.EAR_NUMBER), plain("in the left ear"));
    }

    private void older() {
        ask("Introduce your rabbit.", 4, point(Point.BREED), point(Point.VARIETY), point(Point.SEX), point(Point.AGE));
        showClass(3);
        if (!mixed) {
            ask("What may it weigh, and what does it weigh?", 2, seniorWeight(), point(Point.WEIGHT));
        }
        ask("Which body type and which pose belong to it?", 2, point(Point.BODY_TYPE), point(Point.POSE));
        ask("Which eyes and nails should it have?", 2, point(Point.EYE), point(Point.NAILS));
        ask(
                "Which colour group is it in, and what is its variety?",
                2,
                point(Point.COLOUR_GROUP),
                point(Point.VARIETY));
        ask("Which fur type is it, and how do you prove it?", 2, point(Point.FUR), point(Point.FUR_TEST));
        if (!mixed) {
            ask("What do judges look for in your breed?", 1, point(Point.JUDGES_LOOK_FOR));
        }
    }

    private void showClass(int enough) {
        if (mixed) {
            ask(
                    "Which classes are open to your rabbit?",
                    1,
                    plain("none of the breed classes"),
                    plain("often showmanship: my show decides"));
        } else {
            ask(
                    "Which show class is your rabbit in, and why?",
                    enough,
                    point(Point.SHOW_CLASS),
                    point(Point.AGE),
                    classes());
        }
    }

    private void ask(String question, int enough, Words... points) {
        questions.add(new JudgeQuestion(
                Words.of(question),
                new Levels(level, level),
                findings.rabbit().map(Rabbit::at).orElse(OwnCards.ANY),
                JudgeQuestion.About.OWN_RABBIT,
                enough,
                List.of(points)));
    }

    private static Words plain(String words) {
        return Words.of(words);
    }

    private Words point(Point point) {
        return filled(point.ask(), findings.words(point), point.blank());
    }

    private Words classes() {
        return filled(
                "classes of its breed",
                findings.rabbit()
                        .flatMap(Rabbit::breed)
                        .filter(breed -> breed.basis().sure("classes"))
                        .map(ShowClass::count),
                "rabbit.classes");
    }

    private Words seniorWeight() {
        return filled(
                "weight of a senior",
                findings.rabbit()
                        .flatMap(own -> own.breed()
                                .flatMap(breed -> Limits.senior(breed, own.sex()))
                                .map(Limits::printed)),
                "rabbit.senior weight");
    }

    /** {@code eye colour: brown}, or a line to write on. */
    private static Words filled(String ask, Optional<String> words, String blank) {
        return words.map(found -> Words.of(ask + ": " + found))
                .orElseGet(() -> new Words(List.of(new Inline.Text(ask + ": "), new Inline.Blank(blank))));
    }
}
