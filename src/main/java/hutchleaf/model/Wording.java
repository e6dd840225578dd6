package hutchleaf.model;

import java.util.List;

/**
 * How words are written, for the proofreader.
 *
 * @param spellings words that two countries spell differently
 * @param onlyAmerican words that are respelled for an American reader, while their American form is a British word too
 * @param forms the one form of a term, and forms that are not used
 * @param labels plain words that stand beside figures and need no meaning
 * @param everyday terms that are everyday words too, so that a young reader may meet them before their meaning
 */
public record Wording(
        List<Spelling> spellings,
        List<Spelling> onlyAmerican,
        List<Form> forms,
        List<String> labels,
        List<String> everyday) {
    /** A word in British and in American spelling. */
    public record Spelling(String uk, String us) {}

    /** The form to write, and one not to. */
    public record Form(String write, String not) {}

    public Wording {
        spellings = List.copyOf(spellings);
        onlyAmerican = List.copyOf(onlyAmerican);
        forms = List.copyOf(forms);
        labels = List.copyOf(labels);
        everyday = List.copyOf(everyday);
    }
}
