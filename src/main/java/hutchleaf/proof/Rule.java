package hutchleaf.proof;

/** What a finding is about. The key is for machines and does not change. */
public enum Rule {
    TREE("tree"),
    PAGE_GLYPH("page-glyph"),
    CARD_FIT("card-fit"),
    COVERAGE_STOP("coverage-stop"),
    COVERAGE_SUBJECT("coverage-subject"),
    READING_TOPIC("reading-topic"),
    READING_EDITION("reading-edition"),
    READING_SENTENCE("reading-sentence"),
    SAFETY_CAUTION("safety-caution"),
    SAFETY_STOP_RULE("safety-stop-rule"),
    SAFETY_HANDS("safety-hands"),
    SAFETY_LIFT("safety-lift"),
    SAFETY_VETERINARIAN("safety-veterinarian"),
    SAFETY_STAYS_HOME("safety-stays-home"),
    SAFETY_HANDWASHING("safety-handwashing"),
    SAFETY_DRUG("safety-drug"),
    SAFETY_DOSE("safety-dose"),
    SAFETY_FEED("safety-feed"),
    TRUTH_NUMBER("truth-number"),
    TRUTH_TYPE("truth-type"),
    SOURCE_NONE("source-none"),
    SOURCE_UNKNOWN("source-unknown"),
    SOURCE_UNUSED("source-unused"),
    CARD_ONE_QUESTION("card-one-question"),
    CARD_YES_NO("card-yes-no"),
    CARD_GIVEN_AWAY("card-given-away"),
    CARD_LENGTH("card-length"),
    CARD_TWIN("card-twin"),
    CARD_CORE("card-core"),
    WORD_UNDEFINED("word-undefined"),
    WORD_SPELLING("word-spelling"),
    WORD_FORM("word-form"),
    WORD_PRONOUN("word-pronoun"),
    WORD_MARK("word-mark"),
    WORD_ADDRESS("word-address"),
    FIGURE_UNUSED("figure-unused"),
    FIGURE_WIDTH("figure-width"),
    FIGURE_LABEL("figure-label"),
    FIGURE_LABEL_PLACE("figure-label-place"),
    FIGURE_NARROW("figure-narrow"),
    FIGURE_INK("figure-ink"),
    FIGURE_UNSAFE("figure-unsafe");

    private final String key;

    Rule(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
