package hutchleaf.cli;

/** What the program's exit code says. */
final class Exit {
    static final int DONE = 0;
    static final int CONTENT_TO_MEND = 1;
    static final int WRONG_ARGUMENTS = 2;
    static final int COULD_NOT_READ_OR_WRITE = 3;
    static final int OUR_BUG = 70;

    private Exit() {}
}
