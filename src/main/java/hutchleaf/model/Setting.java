package hutchleaf.model;

/** How a publication to read is set, beside the ordinary setting. */
public enum Setting {
    /** As its level is set. */
    ORDINARY("", ""),
    /** 18 pt and more everywhere, in one column: large print of the American Printing House (Kitchel). */
    LARGE("-large", ", large print"),
    /** Wider spaces between lines, words and letters, one column, nothing slanted: British Dyslexia Association, from memory. */
    EASY("-easy", ", easy read");

    private final String suffix;
    private final String title;

    Setting(String suffix, String title) {
        this.suffix = suffix;
        this.title = title;
    }

    /** What a file's name ends in, before its dot. */
    public String suffix() {
        return suffix;
    }

    /** As a roster writes it: {@code large print}; empty for the ordinary one. */
    public String word() {
        return title.isEmpty() ? "" : title.substring(2);
    }

    /** What follows the title of a publication: {@code , large print}. */
    public String title() {
        return title;
    }
}
