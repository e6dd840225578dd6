package hutchleaf.proof;

/** The spelling the tree is held to. */
public enum Spelling {
    UK,
    US
}
