package hutchleaf.model;

/**
 * How a member's paper is printed, and what helps at the table.
 *
 * @param setting of all that the member reads
 * @param talkThrough the member directs a helper's hands
 * @param cueCard the member holds the stops in key words
 */
public record Needs(Setting setting, boolean talkThrough, boolean cueCard) {
    /** Paper as it is set for the level, and no help. */
    public static final Needs NONE = new Needs(Setting.ORDINARY, false, false);

    /** The same with this setting where none was named. */
    public Needs orElse(Setting other) {
        return setting == Setting.ORDINARY ? new Needs(other, talkThrough, cueCard) : this;
    }
}
