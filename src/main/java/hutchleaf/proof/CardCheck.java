package hutchleaf.proof;

import hutchleaf.model.Card;
import hutchleaf.model.Topic;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** A card asks one question that needs more than yes or no, does not answer itself, and is short enough to say. */
final class CardCheck implements Check {
    /** Own rule: what a child can say back in one breath or two. */
    private static final int MOST_WORDS = 30;

    private static final Pattern YES_NO = Pattern.compile(
            "^(?:is|are|was|were|am|do|does|did|can|could|should|would|will|has|have|had|may|might|must)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern TWO_IN_ONE = Pattern.compile(
            "(?:,|\\band) (?:what|why|how|where|when|which|who|name|show)\\b|\\?.*\\?", Pattern.CASE_INSENSITIVE);
    private static final Pattern CHOICE = Pattern.compile("\\bor\\b");

    @Override
    public void check(Material material, Findings findings) {
        for (Topic topic : material.library().topics()) {
            topic.practice().cards().forEach(card -> check(card, findings));
        }
    }

    private static void check(Card card, Findings findings) {
        String question = card.question().plain().strip();
        String answer = card.answer().plain().strip();
        String name = "card " + card.code() + " '" + question + "'";
        List<String> sentences = Sentences.of(question);
        String asked = sentences.get(sentences.size() - 1);
        if (TWO_IN_ONE.matcher(question).find()) {
            findings.error(Rule.CARD_ONE_QUESTION, card.at(), name + " asks two things", "make two cards of it");
        }
        if (YES_NO.matcher(asked).find() && !CHOICE.matcher(asked).find()) {
            findings.error(
                    Rule.CARD_YES_NO,
                    card.at(),
                    name + " can be answered with yes or no",
                    "ask what, why, how or which");
        }
        if (givenAway(question, answer)) {
            findings.error(
                    Rule.CARD_GIVEN_AWAY,
                    card.at(),
                    name + " holds its own answer '" + answer + "'",
                    "ask without the words of the answer");
        }
        int words = Sentences.words(answer).size();
        if (words > MOST_WORDS) {
            findings.error(
                    Rule.CARD_LENGTH,
                    card.at(),
                    "the answer of " + name + " has " + words + " words",
                    "say it in " + MOST_WORDS + " or fewer");
        }
    }

    private static boolean givenAway(String question, String answer) {
        List<String> asked = PlainWords.of(question.toLowerCase(Locale.ROOT));
        List<String> told = PlainWords.of(answer.toLowerCase(Locale.ROOT));
        return !told.isEmpty() && !CHOICE.matcher(question).find() && asked.containsAll(told);
    }
}
